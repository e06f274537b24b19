/**
 * The page that lists all that is kept on the device, and all that was set aside there, each with its size, saved to a file or
 * deleted. What there is to list is worked out in `list.ts`; what may be kept at all is declared in `src/storage`.
 */
export { KeptHere } from './KeptHere.tsx';
