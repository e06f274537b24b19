import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { wallLabel } from '#words/bench/index.ts';
import { type Pace, usePainting } from './usePainting.ts';
import { useBench, useSeen } from './view.ts';
import { type WallLight, type WallPicture, wallOf } from './wall.ts';

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
	const hallAndLight = useMemo(
		() => (
			<>
				<Hall {...picture} />
				<Pools {...picture} />
			</>
		),
		[picture],
	);
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

/** The pools, each lit by a gradient of its own whose colour is painted from outside Preact. */
function Pools({ lamps, width, height }: WallPicture): JSX.Element {
	const pools = lamps.flatMap((lamp) => lamp.pools);
	return (
		<g class="wall-light" data-many={pools.length > MANY}>
			<defs>
				<clipPath id="hall-clip">
					<rect x={-width * 100} y={-height * 100} width={width * 300} height={height * 100} />
				</clipPath>
				{pools.map(({ key, half, peak, y, ry }) => (
					<radialGradient key={key} id={`pool-${key}`} data-pool={key} fy={0.5 + (y - peak) / (2 * ry)}>
						<stop offset="0" stop-color="currentColor" />
						<stop offset={half * 0.55} stop-color="currentColor" stop-opacity="0.92" />
						<stop offset={half} stop-color="currentColor" stop-opacity="0.55" />
						<stop offset={(1 + half) / 2} stop-color="currentColor" stop-opacity="0.16" />
						<stop offset="1" stop-color="currentColor" stop-opacity="0" />
					</radialGradient>
				))}
				{pools.map(({ key, y, lens: [, from] }) => (
					<linearGradient
						key={key}
						id={`throw-${key}`}
						data-pool={key}
						x2="0"
						y1={y > from ? 1 : 0}
						y2={y > from ? 0 : 1}
					>
						<stop offset="0" stop-color="currentColor" stop-opacity="0.32" />
						<stop offset="1" stop-color="currentColor" stop-opacity="0" />
					</linearGradient>
				))}
			</defs>
			{lamps
				.filter(({ overhead }) => !overhead)
				.map(({ fixture, x }) => (
					<ellipse key={fixture} data-pool={`${fixture}.0`} class="wall-spill" cx={x * 100} cy="30" rx="120" ry="22" />
				))}
			{lamps.map(({ pools: own }) =>
				own.map(({ key, lens: [x, y], x: cx, y: cy, rx, ry, half }) => (
					<g key={key} data-pool={key}>
						<path
							class="wall-throw"
							fill={`url(#throw-${key})`}
							d={`M${x * 100 - 5} ${-y * 100}L${(cx - rx * half) * 100} ${-cy * 100}H${(cx + rx * half) * 100}L${x * 100 + 5} ${-y * 100}Z`}
						/>
						<ellipse
							clip-path="url(#hall-clip)"
							opacity={own.length > 1 ? 0.42 : 1}
							cx={cx * 100}
							cy={-cy * 100}
							rx={rx * 100}
							ry={ry * 100}
							fill={`url(#pool-${key})`}
						/>
					</g>
				)),
			)}
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

/** The empty hall: boarded wall, pilasters, a frieze, the floor. It goes on as far again to both sides, where the glass is wider. */
function Hall({ width, height, floor }: WallPicture): JSX.Element {
	const w = width * 100;
	const h = height * 100;
	const boards = Array.from({ length: Math.floor(height / 0.45) }, (_, i) => -45 * (i + 1));
	const bays = Math.max(2, Math.round(width / 4));
	const pilasters = Array.from({ length: 3 * bays + 1 }, (_, i) => ((i - bays) * w) / bays);
	const across = { x: -w, width: 3 * w };
	return (
		<g class="hall">
			<rect class="hall-wall" {...across} y={-h} height={h} />
			<path class="hall-boards" d={boards.map((y) => `M${-w} ${y}H${2 * w}`).join('')} />
			<path class="hall-dado" d={`M${-w} -110H${2 * w}`} />
			{pilasters.map((x) => (
				<rect key={x} class="hall-pilaster" x={x - 16} y={-h + 46} width="32" height={h - 46} />
			))}
			<rect class="hall-frieze" {...across} y={-h} height="46" />
			<rect class="hall-floor" {...across} y="0" height={floor * 100} />
			<path class="hall-edge" d={`M${-w} 1H${2 * w}`} />
		</g>
	);
}
