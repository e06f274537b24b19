import type { Feature } from './serve.ts';

/** What the worker can be asked, by feature: each is fetched with the first question to it. */
export const FEATURES = {
	finder: () => import('../features/finder/routes.ts'),
	tree: () => import('../features/fault-tree/routes.ts'),
	hidden: () => import('../features/hidden-faults/routes.ts'),
	slips: () => import('../features/rig-sheet/routes.ts'),
	papers: () => import('../features/papers/routes.ts'),
	gdtf: () => import('../features/gdtf/routes.ts'),
	mvr: () => import('../features/mvr/routes.ts'),
	stock: () => import('../features/stock/routes.ts'),
} satisfies Record<string, () => Promise<Feature>>;

type Features = typeof FEATURES;
type RoutesOf<F extends keyof Features> = Awaited<ReturnType<Features[F]>>['routes'];

/** Every route, by name: a feature's, a full stop, and the function's. */
type Routes = {
	[F in keyof Features as `${F}.${keyof RoutesOf<F> & string}`]: RoutesOf<F>;
};
export type RouteName = keyof Routes;
type FunctionOf<R extends RouteName> = R extends `${string}.${infer N}`
	? Extract<Routes[R][N & keyof Routes[R]], (...asks: never[]) => unknown>
	: never;

/** What a route takes, tells on the way, and gives. */
export type AsksOf<R extends RouteName> =
	FunctionOf<R> extends (asks: infer A, ...more: never[]) => unknown ? A : never;
export type StageOf<R extends RouteName> =
	Parameters<FunctionOf<R>> extends [unknown, (stage: infer S) => void] ? S : never;
export type GivesOf<R extends RouteName> = FunctionOf<R> extends (...asks: never[]) => infer G ? Awaited<G> : never;
