import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { fill } from '../../../wording/index.ts';
import { Arrow, Label, Lens } from './parts.tsx';

const { drawn } = figureWords;

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
			<circle class="f-here" cx="374" cy="80" r="13" />
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
					<rect class={i < 9 ? 'f-signal' : 'f-well'} x={81 + wide * i} y="40" width={wide} height="30" />
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
			<Label x={108} y={120}>
				{drawn.frame.reads}
			</Label>
			<Label x={108} y={142}>
				{drawn.frame.next}
			</Label>
		</g>
	);
}

/** The break of the drawing: after this fixture of eight. */
export const BROKEN_AFTER = 5;
export const ROW = 8;

/**
 * Which indicators to read, in order, to find a break in a row whose last is dark: each time the middle of what is left.
 * @param good whether data reaches the fixture of this number, from 1
 */
export function looksFor(row: number, good: (n: number) => boolean): number[] {
	const looks: number[] = [];
	let lit = 0;
	let dark = row;
	while (dark - lit > 1) {
		const middle = Math.floor((lit + dark) / 2);
		looks.push(middle);
		if (good(middle)) lit = middle;
		else dark = middle;
	}
	return looks;
}

/** A row of eight whose lenses are covered: their data indicators say which half to look in, look by look. */
export function Half(): JSX.Element {
	const x = (n: number) => 46 * n - 6;
	const good = (n: number) => n <= BROKEN_AFTER;
	return (
		<g>
			<path class="f-wire" d={`M4 84H${x(BROKEN_AFTER) + 22}M${x(BROKEN_AFTER) + 28} 84H${x(ROW)}`} />
			{Array.from({ length: ROW }, (_, i) => i + 1).map((n) => (
				<g key={n}>
					<path class="f-part" d={`M${x(n) - 16} 62h32v46h-32z`} />
					<path class="f-cover" d={`M${x(n) - 20} 66v-14q20 -14 40 0v14z`} />
					<text class="f-label" x={x(n)} y="84" text-anchor="middle">
						{n}
					</text>
					<circle class={good(n) ? 'f-on' : 'f-off'} cx={x(n)} cy="97" r="6" />
				</g>
			))}
			<Arrow from={[x(BROKEN_AFTER) + 30, 28]} to={[x(BROKEN_AFTER) + 26, 60]} />
			<Label x={x(BROKEN_AFTER) + 26} y={20} middle>
				{drawn.half.broken}
			</Label>
			<Label x={10} y={20}>
				{drawn.half.covers}
			</Label>
			{looksFor(ROW, good).map((n, look) => (
				<g key={n}>
					<Arrow from={[x(n), 142 + 24 * look]} to={[x(n), 112]} />
					<Label x={x(n) + (good(n) ? -8 : 8)} y={148 + 24 * look} end={good(n)}>
						{fill(good(n) ? drawn.half.lit : drawn.half.dark, { look: look + 1, n })}
					</Label>
				</g>
			))}
		</g>
	);
}

/** One leads, three follow: the arrow is the line, and it ends in a terminator as any line does. */
export function Lead(): JSX.Element {
	const x = (n: number) => 42 + 88 * n;
	return (
		<g>
			<path class="f-wire" d="M42 84H372" />
			{[0, 1, 2, 3].map((n) => (
				<g key={n}>
					<path class="f-beam" d={`M${x(n) - 24} 56L${x(n) - 36} 8H${x(n) + 36}L${x(n) + 24} 56Z`} />
					<path class={n === 0 ? 'f-here' : 'f-part'} d={`M${x(n) - 28} 56h56v54h-56z`} />
					<Lens at={[x(n), 57]} wide={50} />
					{n > 0 && <path class="f-line" d={`M${x(n) - 46} 77l10 7-10 7`} />}
				</g>
			))}
			<circle class="f-here" cx="376" cy="84" r="13" />
			<Arrow from={[362, 124]} to={[373, 101]} />
			<Label x={42} y={136} middle>
				{drawn.lead.leads}
			</Label>
			<Label x={174} y={136} middle>
				{drawn.lead.follow}
			</Label>
			<Label x={394} y={140} end>
				{drawn.lead.terminator}
			</Label>
		</g>
	);
}

/** One line in, three out: each branch is a line of its own, with a terminator at its end. */
export function Branches(): JSX.Element {
	const y = (branch: number) => 40 + 58 * branch;
	return (
		<g>
			<path class="f-part" d="M8 74h62v48H8z" />
			<Label x={39} y={103} middle>
				{drawn.daisy.desk}
			</Label>
			<path class="f-wire" d="M70 98H118" />
			{[0, 1, 2].map((branch) => (
				<g key={branch}>
					<path class="f-wire" d={`M172 98C206 98 190 ${y(branch)} 224 ${y(branch)}H352`} />
					{[0, 1].map((n) => (
						<path key={n} class="f-part" d={`M${232 + 58 * n} ${y(branch) - 18}h40v36h-40z`} />
					))}
					<circle class="f-here" cx="362" cy={y(branch)} r="13" />
				</g>
			))}
			<path class="f-part" d="M118 60h56v76h-56z" />
			<Label x={146} y={103} middle small>
				{drawn.branches.box}
			</Label>
			<Label x={394} y={198} end>
				{drawn.branches.ends}
			</Label>
			<Label x={20} y={198}>
				{drawn.branches.branches}
			</Label>
		</g>
	);
}
