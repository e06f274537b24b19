import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { DIP_WEIGHTS, PINS, switchesFor } from '../../../../shared/dmx/index.ts';
import { bundledProfile, modeOf } from '../../../../shared/profile/index.ts';
import { fill } from '../../../wording/index.ts';
import { Arrow, Label } from './parts.tsx';

const { drawn } = figureWords;

/** What each pin carries, on five-pin and three-pin plugs: a row for each pin, in the order of their numbers. */
export function Pins(): JSX.Element {
	const y = (row: number) => 52 + 36 * row;
	const column = (count: number, x: number, name: string) => (
		<g>
			<Label x={x} y={20} middle>
				{name}
			</Label>
			<rect class="f-part" x={x - 24} y={30} width="48" height={8 + 36 * count} rx="24" />
			{PINS.slice(0, count).map((conductor, row) => (
				<g key={conductor}>
					<circle class="f-well" cx={x} cy={y(row)} r="14" />
					<Label x={x} y={y(row) + 5} middle>{`${row + 1}`}</Label>
				</g>
			))}
		</g>
	);
	return (
		<g>
			{PINS.map((conductor, row) => (
				<g key={conductor}>
					<path class="f-arrow" d={`M80 ${y(row)}H${row < 3 ? 126 : 222}${row < 3 ? `M174 ${y(row)}H222` : ''}`} />
					<Label x={232} y={y(row) + 5}>
						{figureWords.conductors[conductor]}
					</Label>
				</g>
			))}
			{column(5, 56, figureWords.plugs.five)}
			{column(3, 150, figureWords.plugs.three)}
		</g>
	);
}

/** A line from desk to fixture to fixture, with a terminator in the last. */
export function Daisy(): JSX.Element {
	return (
		<g>
			<path class="f-part" d="M10 56h70v48H10z" />
			<Label x={45} y={86} middle>
				{drawn.daisy.desk}
			</Label>
			{[0, 1, 2].map((n) => (
				<g key={n}>
					<path class="f-wire" d={`M${80 + 94 * n} 80C${94 + 94 * n} 122 ${104 + 94 * n} 122 ${118 + 94 * n} 80`} />
					<path class="f-part" d={`M${118 + 94 * n} 56h56v48h-56z`} />
					<Label x={146 + 94 * n} y={86} middle>{`${n + 1}`}</Label>
					<Label x={120 + 94 * n} y={48} small>
						{drawn.daisy.in}
					</Label>
					<Label x={150 + 94 * n} y={48} small>
						{drawn.daisy.out}
					</Label>
				</g>
			))}
			<circle class="f-accent" cx="374" cy="80" r="13" />
			<Arrow from={[350, 150]} to={[372, 98]} />
			<Label x={300} y={170}>
				{drawn.daisy.terminator}
			</Label>
		</g>
	);
}

/** One frame: a break, a start code, then slots 1 to 512 in a row, three fixtures reading their own. */
export function Frame(): JSX.Element {
	const wide = 21;
	return (
		<g>
			<path class="f-line" d="M10 40h14v30h36V40" />
			<Label x={10} y={28}>
				{drawn.frame.break}
			</Label>
			<rect class="f-well" x="60" y="40" width={wide} height="30" />
			<Label x={70} y={61} middle>
				0
			</Label>
			{Array.from({ length: 12 }, (_, i) => (
				<g key={i}>
					<rect class={i < 9 ? 'f-accent-soft' : 'f-well'} x={81 + wide * i} y="40" width={wide} height="30" />
					<Label x={81 + wide * (i + 0.5)} y={60} middle small>{`${i + 1}`}</Label>
				</g>
			))}
			<Label x={348} y={61}>
				… 512
			</Label>
			<Arrow from={[70, 112]} to={[70, 74]} />
			<Label x={20} y={130}>
				{drawn.frame.startCode}
			</Label>
			<path class="f-line" d="M82 78v10h186v-10M175 88v14" />
			<Label x={134} y={120}>
				{drawn.frame.reads}
			</Label>
			<Label x={134} y={142}>
				{drawn.frame.next}
			</Label>
		</g>
	);
}

/** A row of eight with a cut in the middle: which half works says where to look. */
export function Half(): JSX.Element {
	return (
		<g>
			<path class="f-wire" d="M10 70H390" />
			{Array.from({ length: 8 }, (_, i) => (
				<g key={i}>
					<path class={i < 5 ? 'f-accent' : 'f-part'} d={`M${24 + 46 * i} 52h32v36h-32z`} />
					<text class={i < 5 ? 'f-ink' : 'f-label'} x={40 + 46 * i} y="76" text-anchor="middle">
						{i + 1}
					</text>
				</g>
			))}
			<Arrow from={[200, 130]} to={[200, 92]} />
			<Label x={200} y={150} middle>
				{drawn.half.first}
			</Label>
			<Arrow from={[270, 20]} to={[270, 48]} />
			<Label x={210} y={16}>
				{drawn.half.second}
			</Label>
		</g>
	);
}

/** One leads, three follow: the arrow is the line. */
export function Lead(): JSX.Element {
	return (
		<g>
			<path class="f-wire" d="M70 84H380" />
			{[0, 1, 2, 3].map((n) => (
				<g key={n}>
					<path class={n === 0 ? 'f-accent' : 'f-part'} d={`M${22 + 98 * n} 56h56v54h-56z`} />
					<path class="f-beam" d={`M${24 + 98 * n} 56L${10 + 98 * n} 10H${90 + 98 * n}L${76 + 98 * n} 56Z`} />
					{n > 0 && <path class="f-line" d={`M${4 + 98 * n} 78l10 6-10 6`} />}
				</g>
			))}
			<Label x={50} y={136} middle>
				{drawn.lead.leads}
			</Label>
			<Label x={246} y={136} middle>
				{drawn.lead.follow}
			</Label>
		</g>
	);
}

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
					<rect class={up[i] ? 'f-accent' : 'f-solid'} x={x(i) - 8} y={up[i] ? 45 : 70} width="16" height="21" rx="2" />
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
						<rect class={i % 2 === 0 ? 'f-accent-soft' : 'f-well'} x="92" y={top} width="60" height={tall} />
						<Label x={84} y={top + Math.min(14, tall / 2 + 5)} end small>{`${from}`}</Label>
						<Label x={164} y={top + tall / 2 + 5}>
							{fill(drawn.bands.band, { name, from, to })}
						</Label>
					</g>
				);
			})}
		</g>
	);
}
