import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { Arrow, Label } from './parts.tsx';

const { drawn } = figureWords;

/** A wash hung from a pipe: clamp, yoke, and the safety bond round the pipe and through the fixture's own point. */
export function Bond(): JSX.Element {
	return (
		<g>
			<path class="f-bond" d="M258 62C250 40 250 26 262 24" />
			<rect class="f-solid" x="20" y="36" width="360" height="18" rx="9" />
			<Label x={24} y={26}>
				{drawn.bond.pipe}
			</Label>
			<path class="f-part" d="M182 24h36v44h-36z" />
			<path class="f-line" d="M200 68v18M218 40h14v10h-14" />
			<Arrow from={[120, 96]} to={[180, 62]} />
			<Label x={24} y={102}>
				{drawn.bond.clamp}
			</Label>
			<path class="f-line" d="M150 150V86h100v64" />
			<path class="f-part" d="M158 112h84l14 62H144z" />
			<circle class="f-part" cx="226" cy="126" r="7" />
			<path class="f-bond" d="M262 24C276 26 276 50 270 66C264 90 250 112 226 126C246 108 262 82 258 62" />
			<Arrow from={[310, 112]} to={[266, 92]} />
			<Label x={300} y={130}>
				{drawn.bond.bond[0]}
			</Label>
			<Label x={300} y={148}>
				{drawn.bond.bond[1]}
			</Label>
			<path class="f-beam" d="M144 174L104 226H296L256 174Z" />
			<Arrow from={[116, 146]} to={[214, 128]} />
			<Label x={24} y={146}>
				{drawn.bond.point[0]}
			</Label>
			<Label x={24} y={164}>
				{drawn.bond.point[1]}
			</Label>
		</g>
	);
}

/** The three ways to hold a light: on the floor, by a bracket on a wall, by a clamp on a pipe. */
export function Ways(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 176H388" />
			<path class="f-part" d="M34 132h62l8 34H26z" />
			<path class="f-line" d="M28 176l8-12M102 176l-8-12" />
			<Label x={65} y={204} middle>
				{drawn.ways.floor}
			</Label>
			<path class="f-solid" d="M150 30h12v146h-12z" />
			<path class="f-line" d="M162 84h32v16M162 74v20" />
			<path class="f-part" d="M172 100h54l8 32h-70z" />
			<circle class="f-part" cx="168" cy="48" r="5" />
			<circle class="f-part" cx="212" cy="108" r="5" />
			<path class="f-bond" d="M168 48C196 48 214 70 212 108" />
			<Label x={193} y={204} middle>
				{drawn.ways.bracket}
			</Label>
			<path class="f-bond" d="M362 60C356 42 358 34 366 34" />
			<rect class="f-solid" x="270" y="44" width="118" height="12" rx="6" />
			<path class="f-part" d="M312 36h24v28h-24z" />
			<path class="f-line" d="M324 64v14M296 112V78h56v34" />
			<path class="f-part" d="M298 90h52l8 34h-68z" />
			<circle class="f-part" cx="340" cy="100" r="5" />
			<path class="f-bond" d="M366 34C378 36 376 54 370 66C364 82 354 94 340 100C356 88 366 74 362 60" />
			<Label x={325} y={204} middle>
				{drawn.ways.clamp}
			</Label>
		</g>
	);
}

/** A light that stands inside a column, and one behind a facade: seen from the side, cut open. */
export function Column(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 220H388" />
			<path class="f-solid" d="M60 20h12v176H60zM128 20h12v176h-12z" />
			<path class="f-line" d="M66 200v18M134 200v18" />
			<path class="f-beam" d="M92 196L74 24H126L108 196Z" />
			<path class="f-part" d="M84 196h32l6 22H78z" />
			<Label x={100} y={242} middle>
				{drawn.column.column}
			</Label>
			<Arrow from={[170, 150]} to={[142, 206]} />
			<Arrow from={[158, 112]} to={[104, 18]} />
			<Label x={148} y={132}>
				{drawn.column.gaps}
			</Label>
			<path class="f-solid" d="M262 70h10v150h-10zM352 20h14v200h-14z" />
			<path class="f-beam" d="M296 196L352 40V150L308 196Z" />
			<path class="f-part" d="M284 196h34l6 22h-46z" />
			<Label x={312} y={242} middle>
				{drawn.column.facade}
			</Label>
			<Label x={232} y={60}>
				{drawn.column.screen}
			</Label>
			<Label x={341} y={14}>
				{drawn.column.wall}
			</Label>
		</g>
	);
}

/** A cable coiled in even loops, its ends tied apart from it. */
export function Coil(): JSX.Element {
	return (
		<g>
			{[0, 1, 2, 3].map((n) => (
				<ellipse key={n} class="f-wire" cx={150 + 5 * n} cy={108 + 3 * n} rx={92} ry={78} />
			))}
			<path class="f-wire" d="M243 118C290 120 300 160 340 158" />
			<path class="f-wire" d="M62 120C30 140 40 180 66 190" />
			<path class="f-part" d="M338 148h36v20h-36zM58 182h36v20H58z" />
			<path class="f-tie" d="M148 22h18v28h-18z" />
			<Arrow from={[210, 22]} to={[170, 32]} />
			<Label x={216} y={26}>
				{drawn.coil.tie}
			</Label>
			<Label x={270} y={196}>
				{drawn.coil.plugs}
			</Label>
		</g>
	);
}
