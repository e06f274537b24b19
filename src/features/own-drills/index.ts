/**
 * Drills on the crew's own fixtures: the page's address holds the fixture and the seed, so a link opens it for anybody. Tasks are made by
 * `ownTask` of `sim/drill`, done and marked by `src/features/drills`; all of that is fetched once a fixture is picked.
 */
export { OwnDrills } from './OwnDrills.tsx';
