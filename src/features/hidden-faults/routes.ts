/** What hidden faults do in the worker. */
import { makeHiddenWork } from './work.ts';

export const routes = makeHiddenWork();
