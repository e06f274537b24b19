import type { JSX } from 'preact';
import { figureWords } from '#words/lessons/index.ts';
import { Arrow, Label, Lens, Light } from './parts.tsx';

const { drawn } = figureWords;

/** A wash hung from a pipe: clamp, yoke, and the safety bond round the pipe, through the maker's point and back into its closure. */
export function Bond(): JSX.Element {
	return (
		<g>
			<path class="f-beam" d="M152 176L104 232H296L248 176Z" />
			<path class="f-bond" d="M262 70C248 56 250 30 262 28" />
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
			<Lens at={[200, 175]} wide={104} />
			<path class="f-line" d="M222 112a9 9 0 0 1 18 0" />
			<path class="f-bond" d="M262 28C276 30 274 56 262 70C256 78 244 92 231 106" />
			<g transform="translate(258 76) rotate(42)">
				<rect class="f-closure" x="-9" y="-15" width="18" height="30" rx="9" />
				<path class="f-line" d="M9 -6v12" />
			</g>
			<Arrow from={[318, 78]} to={[275, 78]} />
			<Label x={322} y={74}>
				{drawn.bond.closure[0]}
			</Label>
			<Label x={322} y={92}>
				{drawn.bond.closure[1]}
			</Label>
			<Arrow from={[300, 130]} to={[250, 92]} />
			<Label x={290} y={148}>
				{drawn.bond.bond[0]}
			</Label>
			<Label x={290} y={166}>
				{drawn.bond.bond[1]}
			</Label>
			<Arrow from={[116, 146]} to={[220, 110]} />
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
			<Lens at={[65, 132]} wide={62} />
			<path class="f-line" d="M28 176l8-12M102 176l-8-12" />
			<Label x={65} y={204} middle>
				{drawn.ways.floor}
			</Label>
			<path class="f-solid" d="M150 30h12v146h-12z" />
			<path class="f-line" d="M162 84h32v16M162 74v20" />
			<path class="f-part" d="M172 100h54l8 32h-70z" />
			<Lens at={[199, 132]} wide={70} />
			<circle class="f-part" cx="168" cy="48" r="5" />
			<circle class="f-part" cx="212" cy="108" r="5" />
			<path class="f-bond" d="M168 48C178 66 194 90 212 108" />
			<Label x={193} y={204} middle>
				{drawn.ways.bracket}
			</Label>
			<path class="f-bond" d="M362 60C356 42 358 34 366 34" />
			<rect class="f-solid" x="270" y="44" width="118" height="12" rx="6" />
			<path class="f-part" d="M312 36h24v28h-24z" />
			<path class="f-line" d="M324 64v14M296 112V78h56v34" />
			<path class="f-part" d="M298 90h52l8 34h-68z" />
			<Lens at={[324, 124]} wide={68} />
			<circle class="f-part" cx="340" cy="100" r="5" />
			<path class="f-bond" d="M366 34C378 36 376 54 370 66C364 82 354 94 340 100C356 88 366 74 362 60" />
			<Label x={325} y={204} middle>
				{drawn.ways.clamp}
			</Label>
		</g>
	);
}

/** A light that stands inside a column, and one behind a facade: seen from the side, cut open. Air goes in at the foot and out on top. */
export function Column(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 220H388" />
			<path class="f-beam" d="M83 194L74 40H126L117 194Z" />
			<rect class="f-solid" x="52" y="10" width="96" height="12" />
			<path class="f-solid" d="M60 48h12v124H60zM128 48h12v124h-12z" />
			<path class="f-line" d="M66 172v46M134 172v46M66 22v26M134 22v26" />
			<Light at={[100, 195]} />
			<Arrow from={[22, 196]} to={[60, 196]} />
			<Arrow from={[178, 196]} to={[140, 196]} />
			<Arrow from={[84, 35]} to={[30, 35]} />
			<Arrow from={[116, 35]} to={[170, 35]} />
			<Label x={100} y={242} middle>
				{drawn.column.column}
			</Label>
			<Label x={154} y={64}>
				{drawn.column.out}
			</Label>
			<Label x={154} y={176}>
				{drawn.column.in}
			</Label>
			<path class="f-solid" d="M274 70h10v150h-10zM352 20h14v200h-14z" />
			<path class="f-beam" d="M304 190L352 40V150L328 196Z" />
			<Light at={[316, 195]} turn={12} />
			<Label x={318} y={242} middle>
				{drawn.column.facade}
			</Label>
			<Label x={279} y={60} middle>
				{drawn.column.screen}
			</Label>
			<Label x={359} y={14} middle>
				{drawn.column.wall}
			</Label>
		</g>
	);
}
