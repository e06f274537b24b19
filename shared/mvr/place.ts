/** Where something stands: three axes and a place, each x, y, z. Millimetres, Z up, right-handed (DIN SPEC 15801). */
export interface Matrix {
	readonly u: Vector;
	readonly v: Vector;
	readonly w: Vector;
	readonly o: Vector;
}
type Vector = readonly [number, number, number];

export const AT_ORIGIN: Matrix = { u: [1, 0, 0], v: [0, 1, 0], w: [0, 0, 1], o: [0, 0, 0] };

/** How far a number may be from another and still be the same, in axes. */
const HAIR = 1e-4;

/** A matrix as the file writes it, `{u}{v}{w}{o}`, each `x,y,z`; null for what is none. */
export function readMatrix(text: string): Matrix | null {
	const rows = [...text.matchAll(/\{([^{}]*)\}/g)].map(([, row = '']) => row.split(',').map(numberIn));
	const [u, v, w, o] = rows.map((row) =>
		row.length === 3 && row.every(Number.isFinite) ? (row as unknown as Vector) : null,
	);
	return rows.length === 4 && u && v && w && o ? { u, v, w, o } : null;
}

const numberIn = (text: string): number =>
	/^\s*[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?\s*$/i.test(text) ? Number(text) : Number.NaN;

/** What a place within another comes to in the whole: its rows are points of the outer one's axes. */
export const within = (outer: Matrix, inner: Matrix): Matrix => {
	const turned = ([x, y, z]: Vector): Vector => {
		const along = (axis: 0 | 1 | 2): number => x * outer.u[axis] + y * outer.v[axis] + z * outer.w[axis];
		return [along(0), along(1), along(2)];
	};
	const [x, y, z] = turned(inner.o);
	return {
		u: turned(inner.u),
		v: turned(inner.v),
		w: turned(inner.w),
		o: [x + outer.o[0], y + outer.o[1], z + outer.o[2]],
	};
};

/** Whether something is turned, or drawn larger or smaller. */
export const isTurned = ({ u, v, w }: Matrix): boolean =>
	[u, v, w].some((axis, i) =>
		axis.some((value, j) => !(Math.abs(value - (AT_ORIGIN[i === 0 ? 'u' : i === 1 ? 'v' : 'w'][j] as number)) < HAIR)),
	);

/** A place with nothing turned, as the file writes it. Millimetres. */
export const writeMatrix = ([x, y, z]: Vector): string =>
	`{1,0,0}{0,1,0}{0,0,1}{${[x, y, z].map((each) => String(Number(each.toFixed(3)))).join(',')}}`;
