import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { DIP_WEIGHTS, switchesFor } from '../../../../shared/dmx/index.ts';
import { beamOf, edgeSpacing, luxAside, rowLux } from '../../../../shared/optics/index.ts';
import { bundledProfile, modeOf } from '../../../../shared/profile/index.ts';
import { curve } from '../../../../sim/light/index.ts';
import { fill, partCalled } from '../../../wording/index.ts';
import { Label, Lens, Span } from './parts.tsx';

const { drawn } = figureWords;

/** The highest value of a slot. */
const LAST_VALUE = 255;
/** Points along a drawn curve. */
const POINTS = 80;
/** Finer than a tenth is not seen. */
const tenth = (n: number): number => Math.round(10 * n) / 10;

/** Ten switches at a start address, worked out: each up switch with its weight. */
export function Switches(): JSX.Element {
	const address = 24;
	const up = switchesFor(address, 'sum');
	const x = (i: number) => 72 + 33 * i;
	return (
		<g>
			<rect class="f-part" x="52" y="30" width="340" height="92" rx="8" />
			<Label x={4} y={113} small>
				{drawn.switches.switch}
			</Label>
			<Label x={4} y={144} small>
				{drawn.switches.worth}
			</Label>
			{Array.from({ length: 10 }, (_, i) => (
				<g key={i}>
					<rect class="f-well" x={x(i) - 11} y="42" width="22" height="52" rx="3" />
					<rect class={up[i] ? 'f-here' : 'f-solid'} x={x(i) - 8} y={up[i] ? 45 : 70} width="16" height="21" rx="2" />
					<Label x={x(i)} y={113} middle small>{`${i + 1}`}</Label>
					{i < 9 && (
						<Label x={x(i)} y={144} middle small>
							{`${DIP_WEIGHTS[i]}`}
						</Label>
					)}
				</g>
			))}
			<Label x={220} y={176} middle>
				{`${DIP_WEIGHTS.filter((_, i) => up[i]).join(' + ')} = ${address}`}
			</Label>
		</g>
	);
}

/** The function slot of the battery wash's nine-slot mode, drawn to scale from its profile. */
export function Bands(): JSX.Element {
	const profile = bundledProfile('tallow-6');
	const slot = profile && modeOf(profile, 'middle').slots.find(({ drives }) => drives.kind === 'bands');
	const bands = slot?.drives.kind === 'bands' ? slot.drives.bands : [];
	const y = (value: number) => 14 + value * 0.9;
	return (
		<g>
			{bands.map(({ id, name, from, to }, i) => {
				const top = y(from);
				const tall = y(to + 1) - top;
				return (
					<g key={id}>
						<rect class={i % 2 === 0 ? 'f-signal' : 'f-well'} x="92" y={top} width="60" height={tall} />
						<Label x={84} y={top + Math.min(14, tall / 2 + 5)} end small>{`${from}`}</Label>
						<Label x={164} y={top + tall / 2 + 5}>
							{fill(drawn.bands.band, { name: partCalled(name), from, to })}
						</Label>
					</g>
				);
			})}
			<Label x={84} y={y(LAST_VALUE + 1)} end small>{`${LAST_VALUE}`}</Label>
		</g>
	);
}

/** Two neighbours on a wall: what each gives along it, and the sum. First too far apart, then with half-bright edges that meet. */
export function Overlap(): JSX.Element {
	const profile = bundledProfile('tallow-6');
	const beam = profile && beamOf(profile);
	if (!beam) return <g />;
	const metres = 3;
	const edge = edgeSpacing(metres, beam.beam);
	const peak = luxAside(beam, metres, 0);
	const spread = 1.5 * edge;
	const x = (at: number) => 200 + (at / spread) * 190;
	const panel = (floor: number, apart: number, label: string) => {
		const y = (lux: number) => floor - 78 * (lux / peak);
		const places = [-apart / 2, apart / 2];
		const along = (lux: (at: number) => number) =>
			Array.from({ length: POINTS + 1 }, (_, i) => ((2 * i) / POINTS - 1) * spread)
				.map((at, i) => `${i === 0 ? 'M' : 'L'}${tenth(x(at))} ${tenth(y(lux(at)))}`)
				.join('');
		return (
			<g>
				{places.map((place) => (
					<path
						key={place}
						class="f-beam"
						d={`${along((at) => luxAside(beam, metres, at - place))}L${x(spread)} ${floor}H${x(-spread)}Z`}
					/>
				))}
				<path class="f-arrow" d={`M${x(-spread)} ${floor}H${x(spread)}`} />
				<path class="f-dash" d={`M${x(-spread)} ${y(peak / 2)}H${x(spread)}`} />
				<path class="f-line" d={along((at) => rowLux(beam, metres, places, at))} />
				{places.map((place) => (
					<Lens key={place} at={[x(place), floor + 9]} wide={26} />
				))}
				<Label x={200} y={floor + 32} middle>
					{label}
				</Label>
			</g>
		);
	};
	return (
		<g>
			<Label x={200} y={20} middle>
				{drawn.overlap.sum}
			</Label>
			<Label x={200} y={62} middle small>
				{drawn.overlap.half}
			</Label>
			{panel(122, 1.5 * edge, drawn.overlap.apart)}
			{panel(258, edge, drawn.overlap.closer)}
		</g>
	);
}

/** The three dimmer curves of the bench, each drawn from the same function that the fixtures use. */
export function Curves(): JSX.Element {
	const x = (level: number) => 70 + 200 * level;
	const y = (out: number) => 214 - 190 * out;
	const kinds = ['straight', 'square', 'soft'] as const;
	return (
		<g>
			<path class="f-arrow" d={`M${x(0)} ${y(1)}V${y(0)}H${x(1)}`} />
			{kinds.map((kind) => (
				<g key={kind}>
					<path
						class={`f-curve f-curve-${kind}`}
						d={Array.from({ length: POINTS + 1 }, (_, i) => i / POINTS)
							.map((level, i) => `${i === 0 ? 'M' : 'L'}${tenth(x(level))} ${tenth(y(curve(kind, level)))}`)
							.join('')}
					/>
				</g>
			))}
			{kinds.map((kind, row) => (
				<g key={kind}>
					<path class={`f-curve f-curve-${kind}`} d={`M290 ${76 + 34 * row}h34`} />
					<Label x={332} y={81 + 34 * row}>
						{drawn.curves[kind]}
					</Label>
				</g>
			))}
			<Span from={[x(0), 232]} to={[x(1), 232]} />
			<Label x={170} y={254} middle>
				{drawn.curves.level}
			</Label>
			<Label x={62} y={32} end>
				{drawn.curves.full}
			</Label>
			<Label x={62} y={218} end>
				{drawn.curves.out}
			</Label>
		</g>
	);
}
