/**
 * The repairs in words, by the catalogue's ids: what to do, how to confirm that it is done, and where the hands go. Nothing here asks
 * anyone to open a fixture: what is wrong inside goes to a competent repairer. Cautions go by ids that the catalogue gives.
 */
export { type RepairWords, repairs } from './repairs.ts';
