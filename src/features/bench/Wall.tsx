import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { wallLabel } from '#words/bench/index.ts';
import { type Pace, usePainting } from './usePainting.ts';
import { useBench, useSeen } from './view.ts';
import { falloff, POOL_EDGE, type WallLight, type WallPicture, type WallPool, wallOf } from './wall.ts';

/** Pools past which they are laid over each other plainly: adding their light up would choke a phone. */
const MANY = 48;
/** Metres past which a wall may be wider than what shows of it. */
const LONG = 16;

/** The hall's wall in elevation, with lamps where they stand and the light they throw. It stays in sight while the page scrolls. */
export function Wall({ pace }: { pace: Pace }): JSX.Element {
	const { select } = useBench();
	const [sheet, selected] = useSeen(({ store, selected }) => [store.rig.sheet, selected]);
	const picture = useMemo(() => wallOf(sheet), [sheet]);
	const scroller = useRef<HTMLDivElement>(null);
	const box = useRef<SVGSVGElement>(null);
	usePainting(box, picture, pace);
	// a long wall is wider than the screen: what is in hand comes into sight
	useEffect(() => {
		const at = picture.lamps.find(({ fixture }) => fixture === selected);
		const { current: view } = scroller;
		if (at && view) view.scrollTo({ left: (at.x / picture.width) * view.scrollWidth - view.clientWidth / 2 });
	}, [picture, selected]);
	const { width, height, floor } = picture;
	// the same for as long as nothing is laid out anew, whichever light is selected
	const hallAndLight = useMemo(() => <Light {...picture} />, [picture]);
	return (
		<div class="wall" ref={scroller} {...(width > LONG ? { tabIndex: 0 } : {})}>
			<svg
				ref={box}
				class="wall-picture"
				style={{ '--aspect': width / (height + floor) }}
				viewBox={`0 ${-height * 100} ${width * 100} ${(height + floor) * 100}`}
				preserveAspectRatio="xMidYMax meet"
				role="img"
				aria-label={wallLabel}
			>
				{hallAndLight}
				{picture.lamps.map((lamp) => (
					// biome-ignore lint/a11y/noStaticElementInteractions: a shortcut for a mouse; the row has the same as buttons
					<g
						key={lamp.fixture}
						class="wall-lamp"
						data-selected={lamp.fixture === selected}
						transform={`translate(${lamp.x * 100} ${-lamp.y * 100})`}
						onClick={() => select(lamp.fixture)}
					>
						<LightBody lamp={lamp} />
					</g>
				))}
			</svg>
		</div>
	);
}

/** Distances from the middle of a pool at which its light is set, as shares of its drawn radius. */
const STOPS = [0, 0.12, 0.25, 0.38, 0.5, 0.62, 0.74, 0.86, 0.94] as const;

/**
 * The hall with the light in it. Light reveals the surface: near black with the pools added up on it, and on top the wall's own
 * surface in light tints, multiplied, so that boards and pilasters show where they are lit. Each pool takes its colour from its
 * group, painted from outside Preact; its core is paler, as the eye sees what is bright.
 */
function Light(picture: WallPicture): JSX.Element {
	const { lamps, width, height, floor } = picture;
	const pools = lamps.flatMap((lamp) => lamp.pools.map((pool) => ({ pool, share: 1 / Math.sqrt(lamp.pools.length) })));
	const isMany = pools.length > MANY;
	const across = { x: -width * 100, width: width * 300 };
	return (
		<>
			<clipPath id="hall-clip">
				<rect {...across} y={-height * 100} height={height * 100} />
			</clipPath>
			<clipPath id="floor-clip">
				<rect {...across} y="0" height={floor * 100} />
			</clipPath>
			<g class="wall-light" clip-path="url(#hall-clip)" data-many={isMany}>
				<rect class="hall-night" {...across} y={-height * 100} height={height * 100} />
				{pools.map((each) => (
					<Pool key={each.pool.key} {...each} hasCore={!isMany} />
				))}
				<Surface {...picture} />
			</g>
			<g class="wall-light" clip-path="url(#floor-clip)" data-many={isMany}>
				<rect class="hall-floor" {...across} y="0" height={floor * 100} />
				<radialGradient id="floor-spill">
					<stop offset="0" stop-color="#fff" />
					<stop offset="0.5" stop-color="#fff" stop-opacity="0.35" />
					<stop offset="1" stop-color="#fff" stop-opacity="0" />
				</radialGradient>
				<mask id="spill" maskContentUnits="objectBoundingBox">
					<rect width="1" height="1" fill="url(#floor-spill)" />
				</mask>
				{lamps.map(({ fixture, x }) => (
					<ellipse
						key={fixture}
						data-pool={`${fixture}.0`}
						class="wall-spill"
						mask="url(#spill)"
						cx={x * 100}
						cy="8"
						rx="150"
						ry="46"
					/>
				))}
				{lamps
					.filter(({ overhead }) => !overhead)
					.map(({ fixture, x, y }) => (
						<ellipse key={fixture} class="wall-shadow" cx={x * 100} cy={34 - y * 100 + 30} rx="46" ry="7" />
					))}
			</g>
			<path class="hall-edge" d={`M${-width * 100} 1H${2 * width * 100}`} />
			{pools.map((each) => (
				<Throw key={each.pool.key} {...each} cones={isMany ? 1 : CONES} />
			))}
		</>
	);
}

interface PoolProps {
	pool: WallPool;
	/** Of the light of its fixture: what a cell of several gives. */
	share: number;
}

function Pool({ pool, share, hasCore }: PoolProps & { hasCore: boolean }): JSX.Element {
	const { key: id, x, y, rx, ry, half, peak } = pool;
	const at = { cx: x * 100, cy: -y * 100 };
	const focus = 0.5 + (y - peak) / (2 * ry * POOL_EDGE);
	return (
		<g class="wall-pool" data-pool={id}>
			<radialGradient id={`pool-${id}`} fy={focus}>
				{STOPS.map((out) => (
					<stop
						key={out}
						offset={out}
						stop-color="currentColor"
						stop-opacity={falloff(out * POOL_EDGE, half) * share}
					/>
				))}
				<stop offset="1" stop-color="currentColor" stop-opacity="0" />
			</radialGradient>
			<ellipse {...at} rx={rx * POOL_EDGE * 100} ry={ry * POOL_EDGE * 100} fill={`url(#pool-${id})`} />
			{hasCore && (
				<>
					<radialGradient id={`core-${id}`} class="wall-core">
						<stop offset="0" stop-opacity={0.6 * share} />
						<stop offset="0.5" stop-opacity={0.22 * share} />
						<stop offset="1" stop-opacity="0" />
					</radialGradient>
					<ellipse cx={x * 100} cy={-peak * 100} rx={rx * half * 90} ry={ry * half * 90} fill={`url(#core-${id})`} />
				</>
			)}
		</g>
	);
}

/** Cones in one another, so that a beam in haze has no hard edge. */
const CONES = 3;

/** The beam in the air, by a little haze. */
function Throw({ pool, share, cones }: PoolProps & { cones: number }): JSX.Element {
	const { key: id, x: cx, y, rx, half } = pool;
	const [x, from] = pool.lens;
	const isUp = y > from;
	return (
		<g class="wall-throw" data-pool={id}>
			<linearGradient id={`throw-${id}`} x2="0" y1={isUp ? 1 : 0} y2={isUp ? 0 : 1}>
				<stop offset="0" stop-color="currentColor" stop-opacity={(0.3 * share) / cones} />
				<stop offset="1" stop-color="currentColor" stop-opacity="0" />
			</linearGradient>
			{Array.from({ length: cones }, (_, i) => {
				const wide = (rx * half * 100 * (i + 1)) / cones;
				const lens = (8 * (i + 1)) / cones;
				return (
					<path
						key={i}
						fill={`url(#throw-${id})`}
						d={`M${x * 100 - lens} ${-from * 100}L${cx * 100 - wide} ${-y * 100}H${cx * 100 + wide}L${x * 100 + lens} ${-from * 100}Z`}
					/>
				);
			})}
		</g>
	);
}

/** What a lamp looks like from the hall: its body, its lens, and its number on a bit of tape. */
function LightBody({ lamp: { fixture, shape, overhead, number, pools } }: { lamp: WallLight }): JSX.Element {
	const tip = overhead ? -1 : 1;
	return (
		<>
			<circle class="wall-reach" r="62" />
			{shape === 'bar' ? (
				<g>
					<rect class="wall-body" x="-62" y={overhead ? -16 : -4} width="124" height="20" rx="4" />
					{pools.map(({ key, x }, cell) => (
						<circle
							key={key}
							data-pool={key}
							class="wall-lens"
							cx={(x - (pools[0]?.x ?? 0)) * 100 - 50}
							cy={overhead ? 2 : -1}
							r="5.5"
							data-cell={cell}
						/>
					))}
				</g>
			) : (
				<g>
					<path
						class="wall-body"
						d={`M-20 ${30 * tip}L-26 ${4 * tip}L-18 ${-6 * tip}H18L26 ${4 * tip}L20 ${30 * tip}Z`}
					/>
					<ellipse data-pool={`${fixture}.0`} class="wall-lens" cy={-5 * tip} rx="17" ry="5" />
				</g>
			)}
			<path class="wall-tape" d={overhead ? 'M-23 -58l46-2 1 30-46 2z' : 'M-23 40l46-2 1 30-46 2z'} />
			<text class="wall-number" y={overhead ? -36 : 62} text-anchor="middle">
				{number}
			</text>
		</>
	);
}

/** The wall's own surface, in the tints it would have by day: boards, pilasters, a frieze. It goes on as far again to both sides, where the glass is wider. */
function Surface({ width, height }: WallPicture): JSX.Element {
	const w = width * 100;
	const h = height * 100;
	const boards = Array.from({ length: Math.floor(height / 0.45) }, (_, i) => -45 * (i + 1));
	const bays = Math.max(2, Math.round(width / 4));
	const pilasters = Array.from({ length: 3 * bays + 1 }, (_, i) => ((i - bays) * w) / bays);
	const across = { x: -w, width: 3 * w };
	return (
		<g class="hall">
			<linearGradient id="pilaster">
				<stop offset="0" stop-color="#7d786e" />
				<stop offset="0.15" stop-color="#d9d4c9" />
				<stop offset="0.85" stop-color="#b5b0a6" />
				<stop offset="1" stop-color="#6b665d" />
			</linearGradient>
			<rect class="hall-wall" {...across} y={-h} height={h} />
			<path class="hall-boards" d={boards.map((y) => `M${-w} ${y}H${2 * w}`).join('')} />
			{pilasters.map((x) => (
				<rect key={x} x={x - 20} y={-h + 46} width="40" height={h - 46} fill="url(#pilaster)" />
			))}
			<path class="hall-dado" d={`M${-w} -110H${2 * w}`} />
			<path class="hall-skirting" d={`M${-w} -9H${2 * w}`} />
			<rect class="hall-frieze" {...across} y={-h} height="46" />
		</g>
	);
}
