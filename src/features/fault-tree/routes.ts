/** What the fault tree does in the worker. */
export { faultTreeRoutes as routes } from './work.ts';
