/**
 * Staying able, on screen: what is due is asked in one sitting of five minutes, with other numbers each time; what is known and what is
 * fading is shown plainly; and all of it can be carried to another device or cleared. The deck itself is `src/features/deck`'s.
 */
export { Review } from './Review.tsx';
