/** What is used of the statistics library: quantiles of the beta and the F distribution. */
declare module 'jstat' {
	interface Quantile {
		inv(p: number, first: number, second: number): number;
	}
	const jstat: { readonly beta: Quantile; readonly centralF: Quantile };
	export default jstat;
}
