import type { JSX } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { planWords } from '#words/plan/index.ts';
import type { Plan, PlanProblem } from '../../../shared/plan/index.ts';
import { useGrown } from './growing.ts';
import { type RulerView, rulersOf, threeDigits } from './view.ts';

interface Props {
	plan: Plan;
	problems: readonly PlanProblem[];
	onPick: (row: string) => void;
}

/** Universes drawn at once: each may hold a hundred fixtures. */
const AT_ONCE = 2;

/** A universe a line: who listens to which of its 512 channels. */
export function Ruler({ plan, problems, onPick }: Props): JSX.Element | null {
	const rulers = useMemo(() => rulersOf(plan, problems), [plan, problems]);
	const count = useGrown(rulers.length, AT_ONCE);
	const drawn = useRef(new Map<number, { readonly line: JSX.Element; readonly shows: string }>());
	/** A universe's line, the same element as before wherever nothing in it has changed: the page then leaves it alone. */
	const lineOf = (ruler: RulerView): JSX.Element => {
		const shows = JSON.stringify(ruler);
		const before = drawn.current.get(ruler.universe);
		if (before?.shows === shows) return before.line;
		const line = <UniverseLine key={ruler.universe} {...ruler} onPick={onPick} />;
		drawn.current.set(ruler.universe, { line, shows });
		return line;
	};
	if (rulers.length === 0) return null;
	return (
		<section class="rig-rulers" aria-label={planWords.ruler}>
			{rulers.slice(0, count).map(lineOf)}
		</section>
	);
}

function UniverseLine({ universe, blocks, used, onPick }: RulerView & Pick<Props, 'onPick'>): JSX.Element {
	return (
		<div class="rig-ruler" role="img" aria-label={planWords.used(universe, used)}>
			<span class="rig-ruler-name" aria-hidden="true">
				{planWords.universe(universe)}
			</span>
			<svg viewBox="0 0 512 24" preserveAspectRatio="none" aria-hidden="true">
				<rect class="rig-ruler-ground" width="512" height="24" />
				{blocks.map(({ row, name, from, to, clashes }) => (
					// biome-ignore lint/a11y/noStaticElementInteractions: a short cut for the mouse; the rows below are buttons
					<rect
						key={row}
						class="rig-block"
						data-clashes={clashes}
						x={from - 1}
						y="2"
						width={Math.max(1, to - from + 0.4)}
						height="20"
						onClick={() => onPick(row)}
					>
						<title>{`${name}: ${threeDigits(from)}–${threeDigits(to)}`}</title>
					</rect>
				))}
			</svg>
			<span class="rig-ruler-free" aria-hidden="true">
				{planWords.free(512 - used)}
			</span>
		</div>
	);
}
