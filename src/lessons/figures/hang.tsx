import type { JSX } from 'preact';
import { Arrow, Label } from './parts.tsx';

/** A wash hung from a bar: clamp, yoke, and the safety bond round the bar and through the fixture's own point. */
export function Bond(): JSX.Element {
	return (
		<g>
			<rect class="f-solid" x="20" y="36" width="360" height="18" rx="9" />
			<Label x={24} y={26}>
				bar
			</Label>
			<path class="f-part" d="M182 24h36v44h-36z" />
			<path class="f-line" d="M200 68v18M218 40h14v10h-14" />
			<Arrow from={[120, 96]} to={[180, 62]} />
			<Label x={24} y={102}>
				rated clamp
			</Label>
			<path class="f-line" d="M150 150V86h100v64" />
			<path class="f-part" d="M158 112h84l14 62H144z" />
			<circle class="f-part" cx="226" cy="126" r="7" />
			<path class="f-bond" d="M226 126C286 96 282 62 262 32C250 26 246 58 250 72C262 92 244 108 226 126" />
			<Arrow from={[310, 110]} to={[268, 90]} />
			<Label x={300} y={130}>
				safety bond,
			</Label>
			<Label x={300} y={148}>
				little slack
			</Label>
			<path class="f-beam" d="M144 174L104 226H296L256 174Z" />
			<Arrow from={[120, 146]} to={[214, 128]} />
			<Label x={24} y={152}>
				bond point
			</Label>
		</g>
	);
}

/** The three ways to hold a light: on the floor, by a bracket on a wall, by a clamp on a bar. */
export function Ways(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 176H388" />
			<path class="f-part" d="M34 132h62l8 34H26z" />
			<path class="f-line" d="M28 176l8-12M102 176l-8-12" />
			<Label x={65} y={204} middle>
				on the floor
			</Label>
			<path class="f-solid" d="M156 40h10v136h-10z" />
			<path class="f-line" d="M166 84h26v16" />
			<path class="f-part" d="M172 100h54l8 32h-70z" />
			<Label x={196} y={204} middle>
				on a bracket
			</Label>
			<path class="f-bond" d="M166 70C206 62 214 82 206 104" />
			<rect class="f-solid" x="270" y="44" width="118" height="12" rx="6" />
			<path class="f-part" d="M318 36h24v28h-24z" />
			<path class="f-line" d="M330 64v14M302 112V78h56v34" />
			<path class="f-part" d="M304 90h52l8 34h-68z" />
			<path class="f-bond" d="M348 98C382 84 378 62 366 42C358 40 358 58 360 66" />
			<Label x={329} y={204} middle>
				by a clamp
			</Label>
		</g>
	);
}

/** A light that stands inside a column, and one behind a facade: seen from the side, cut open. */
export function Column(): JSX.Element {
	return (
		<g>
			<path class="f-soft" d="M12 220H388" />
			<path class="f-solid" d="M60 20h12v200H60zM128 20h12v200h-12z" />
			<path class="f-beam" d="M88 196L72 24H128L112 196Z" />
			<path class="f-part" d="M84 196h32l6 22H78z" />
			<Label x={100} y={242} middle>
				in a column
			</Label>
			<Arrow from={[176, 150]} to={[132, 205]} />
			<Label x={152} y={130}>
				a gap for air
			</Label>
			<path class="f-solid" d="M262 70h10v150h-10zM352 20h14v200h-14z" />
			<path class="f-beam" d="M312 196L352 40V196Z" />
			<path class="f-part" d="M284 196h34l6 22h-46z" />
			<Label x={312} y={242} middle>
				behind a facade
			</Label>
			<Label x={232} y={60}>
				screen
			</Label>
			<Label x={336} y={14}>
				wall
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
			<path class="f-bond" d="M150 16l22 34M172 16l-22 34" />
			<Label x={186} y={34}>
				tie
			</Label>
			<Label x={270} y={196}>
				plugs free
			</Label>
		</g>
	);
}
