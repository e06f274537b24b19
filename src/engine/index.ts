/**
 * Heavy work, off the page: one worker for all that is worked out away from it (finder, fault tree, hidden faults, papers, codes,
 * fixture files, prep slips), asked by routes such as `finder.look`. A route is a function from plain data to plain data in some
 * feature's `routes.ts`; the worker fetches a feature's with the first question to it (`routes.ts` here lists them), and answers in
 * the order asked (`serve.ts`). A question tells its stages, ends in a result or an error, and can be cancelled (`protocol.ts`). A
 * page opens an `Engine` (`client.ts`); its worker starts with the first question, and anew after one that failed or was ended.
 */
export { type AskRoute, CannotRun, Ended, type Engine, openEngine, Refused, troubleText } from './client.ts';
