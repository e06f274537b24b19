/**
 * Counts flashes as WCAG 2.2, 2.3.1 defines them (general flash and red flash thresholds; read), from a series of pictures.
 * It is kept apart from the limiter it checks. Area is not allowed for: each picture counts as filling the field.
 */

/** One picture: when, and its colour. */
export interface Seen {
	readonly ms: number;
	/** Relative luminance 0..1, WCAG 2.2. */
	readonly luminance: number;
	/** R / (R + G + B) in linear sRGB; 0 for black. */
	readonly red: number;
	/** CIE 1976 UCS u′, v′; those of the white point for black. */
	readonly uv: readonly [number, number];
}

/** Relative luminance's linear channel: WCAG 2.2, with the corrected 0.04045. */
const linear = (value: number) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);

/** A picture of `#rrggbb` at a moment. */
export function seen(ms: number, colour: string): Seen {
	const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255));
	const X = 0.4124 * r + 0.3576 * g + 0.1805 * b;
	const Y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
	const Z = 0.0193 * r + 0.1192 * g + 0.9505 * b;
	const sum = X + 15 * Y + 3 * Z;
	return {
		ms,
		luminance: Y,
		red: r + g + b > 0 ? r / (r + g + b) : 0,
		uv: sum > 0 ? [(4 * X) / sum, (9 * Y) / sum] : [0.1978, 0.4683],
	};
}

/** Most flashes (pairs of opposing changes) that end within any one second, its two ends counted in. */
function mostInASecond(changes: readonly number[]): number {
	const counts = changes.map((from) => changes.filter((ms) => ms >= from && ms <= from + 1000).length);
	return Math.floor(Math.max(0, ...counts) / 2);
}

/**
 * General flashes: opposing changes of 10 % or more of maximum relative luminance, the darker side below 0.80, between
 * adjacent peaks and valleys. Ripples smaller than that are no peaks.
 */
export function mostGeneralFlashes(series: readonly Seen[]): number {
	// the turning points of the series, ripples left out
	const points: { ms: number; value: number }[] = [];
	let way = 0;
	for (const { ms, luminance: value } of series) {
		const last = points.at(-1);
		if (!last) points.push({ ms, value });
		else if (way !== 0 && Math.sign(value - last.value) === way) points[points.length - 1] = { ms, value };
		else if (Math.abs(value - last.value) >= 0.1) {
			way = Math.sign(value - last.value);
			points.push({ ms, value });
		}
	}
	const changes = points.slice(1).filter((to, i) => Math.min(to.value, points[i]?.value ?? 0) < 0.8);
	return mostInASecond(changes.map((it) => it.ms));
}

/** Red flashes: opposing changes to or from a saturated red (R / (R + G + B) ≥ 0.8) of more than 0.2 in u′, v′. */
export function mostRedFlashes(series: readonly Seen[]): number {
	const changes: number[] = [];
	let from = series[0];
	for (const now of series) {
		if (!from) break;
		const apart = Math.hypot(now.uv[0] - from.uv[0], now.uv[1] - from.uv[1]);
		if (apart > 0.2 && (now.red >= 0.8 || from.red >= 0.8)) changes.push(now.ms);
		else if (apart <= 0.2) continue;
		from = now;
	}
	return mostInASecond(changes);
}
