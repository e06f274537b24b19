import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { benchWords } from '#words/bench/index.ts';
import { Button } from '../../ui/index.ts';
import { later, type Tool, useBench, useSeen } from './view.ts';

const Desk = later(() => import('./Desk.tsx'));

/** The tools beside the desk, of which one is open at a time. */
const OTHERS: readonly (readonly [Tool, ComponentType<object>])[] = [
	['cables', later(() => import('./Cables.tsx'))],
	['remote', later(() => import('./Remote.tsx'))],
	['sound', later(() => import('./Sound.tsx'))],
	['breaker', later(() => import('./Breaker.tsx'))],
	['clock', later(() => import('./Clock.tsx'))],
	['log', later(() => import('./Log.tsx'))],
];

interface Props {
	/** Tools left out. */
	without: readonly Tool[];
}

/** A bar of the tools beside the desk, and the one of them that is open: it is fetched as it is first opened. */
export function Tools({ without }: Props): JSX.Element {
	const { bring } = useBench();
	const [open] = useSeen(({ tool }) => [tool]);
	const here = OTHERS.filter(([id]) => !without.includes(id));
	const [id, Part] = here.find(([each]) => each === open) ?? [];
	return (
		<div class="tools">
			<div class="tool-bar" data-few={here.filter(([each]) => each !== 'cables').length < 2}>
				{here.map(([each]) => (
					<button
						key={each}
						type="button"
						class="tool-tab"
						data-of={each}
						aria-expanded={each === open}
						onClick={() => bring(each === open ? null : each)}
					>
						{benchWords.parts[each]}
					</button>
				))}
			</div>
			{id && Part && (
				<section key={id} class="tool" data-tool={id} aria-label={benchWords.parts[id]}>
					<h2 class="visually-hidden">{benchWords.parts[id]}</h2>
					<Part />
				</section>
			)}
		</div>
	);
}

/** As wide as wall, row, panel and faders need side by side: the same as in the styles. */
const WIDE = '(min-width: 64rem)';

/** The desk's faders, fetched once they are asked for, or at once where there is a desk and room to show it. */
export function Faders(): JSX.Element {
	const [isUp, hasDesk] = useSeen(({ sheet, store }) => [sheet === 'desk', store.rig.gear.desk !== null]);
	const isWide = useWide();
	const [asked, ask] = useState(false);
	useEffect(() => {
		if (isUp) ask(true);
	}, [isUp]);
	const isThere = asked || isUp || (isWide && hasDesk);
	return (
		<section class="tool faders" data-tool="desk" aria-label={benchWords.parts.desk}>
			<h2 class="visually-hidden">{benchWords.parts.desk}</h2>
			{isThere ? <Desk /> : <Button onClick={() => ask(true)}>{benchWords.parts.desk}</Button>}
		</section>
	);
}

function useWide(): boolean {
	const [isWide, set] = useState(() => matchMedia(WIDE).matches);
	useEffect(() => {
		const query = matchMedia(WIDE);
		const hear = () => set(query.matches);
		query.addEventListener('change', hear);
		return () => query.removeEventListener('change', hear);
	}, []);
	return isWide;
}

/** Where one thing has room: what can be brought up below the row. With the panel alone there is nothing to pick. */
export function SheetTabs({ without }: Props): JSX.Element | null {
	const { bring } = useBench();
	const [sheet, tool] = useSeen(({ sheet, tool }) => [sheet, tool]);
	const more = OTHERS.map(([id]) => id).filter((id) => id !== 'cables' && !without.includes(id));
	const [first] = more;
	const tabs: readonly (readonly ['panel' | Tool, string, boolean])[] = [
		['panel', benchWords.tabs.panel, sheet === 'panel'],
		...(without.includes('desk') ? [] : ([['desk', benchWords.tabs.desk, sheet === 'desk']] as const)),
		...(without.includes('cables')
			? []
			: ([['cables', benchWords.parts.cables, sheet === 'tools' && tool === 'cables']] as const)),
		...(first === undefined
			? []
			: ([
					[
						tool !== null && more.includes(tool) ? tool : first,
						more.length > 1 ? benchWords.tabs.more : benchWords.parts[first],
						sheet === 'tools' && tool !== 'cables',
					],
				] as const)),
	];
	if (tabs.length < 2) return null;
	return (
		<fieldset class="sheet-tabs">
			<legend class="visually-hidden">{benchWords.tabs.label}</legend>
			{tabs.map(([part, words, isUp]) => (
				<button
					key={words}
					type="button"
					class="sheet-tab"
					aria-pressed={isUp}
					onClick={({ currentTarget }) => {
						bring(part);
						toTop(currentTarget);
					}}
				>
					{words}
				</button>
			))}
		</fieldset>
	);
}

/** What is brought up is read from its top: where the page has been scrolled past that, it goes back there. */
function toTop(tab: HTMLElement): void {
	const stage = tab.closest('.bench')?.querySelector('.stage');
	if (stage && stage.getBoundingClientRect().top < 0) stage.scrollIntoView();
}
