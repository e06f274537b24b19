/**
 * The site's own words: what stands in its frame on every page, and on the home, bench, drill, finder, about and not-found pages.
 * A page or a way in is named here only once it exists.
 */

export { frame } from './frame.ts';
export { home } from './home.ts';
export { keptWords } from './kept.ts';
export { nextWords } from './next.ts';
export {
	aboutPage,
	benchPage,
	drillPage,
	drillsPage,
	finderPage,
	learnPage,
	lostPage,
	notKeptPage,
	teachPage,
} from './pages.ts';
