import type { ComponentType, JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
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
	// a steady beat goes on while another tool is looked at
	const heard = useRef(false);
	if (open === 'sound') heard.current = true;
	return (
		<div class="tools">
			<div class="tool-bar">
				{here.map(([id]) => (
					<button
						key={id}
						type="button"
						class="tool-tab"
						data-of={id}
						aria-expanded={id === open}
						onClick={() => bring(id === open ? null : id)}
					>
						{benchWords.parts[id]}
					</button>
				))}
			</div>
			{here.map(
				([id, Part]) =>
					(id === open || (id === 'sound' && heard.current)) && (
						<section key={id} class="tool" data-tool={id} hidden={id !== open}>
							<h2 class="visually-hidden">{benchWords.parts[id]}</h2>
							<Part />
						</section>
					),
			)}
		</div>
	);
}

/** As wide as wall, row, panel and faders need side by side: the same as in the styles. */
const WIDE = '(min-width: 64rem)';

/** The desk's faders, fetched once they are asked for, or at once where there is a desk and room to show it. */
export function Faders(): JSX.Element {
	const [isUp, hasDesk] = useSeen(({ sheet, store }) => [sheet === 'desk', store.rig.gear.desk !== null]);
	const isWide = matchMedia(WIDE).matches;
	const [asked, ask] = useState(false);
	if (isUp && !asked) ask(true);
	return (
		<section class="tool faders" data-tool="desk">
			<h2 class="visually-hidden">{benchWords.parts.desk}</h2>
			{asked || (isWide && hasDesk) ? <Desk /> : <Button onClick={() => ask(true)}>{benchWords.parts.desk}</Button>}
		</section>
	);
}

/** Where one thing has room: what can be brought up below the row. With the panel alone there is nothing to pick. */
export function SheetTabs({ without }: Props): JSX.Element | null {
	const { bring } = useBench();
	const [sheet, tool] = useSeen(({ sheet, tool }) => [sheet, tool]);
	const has = (id: Tool) => !without.includes(id);
	const more = OTHERS.map(([id]) => id).filter((id) => id !== 'cables' && has(id));
	const [first] = more;
	const { tabs, parts } = benchWords;
	const tab = (part: 'panel' | Tool, words: string, isUp: boolean) => (
		<button
			type="button"
			class="sheet-tab"
			aria-pressed={isUp}
			onClick={() => {
				bring(part);
				toTop();
			}}
		>
			{words}
		</button>
	);
	if (!first && !has('desk') && !has('cables')) return null;
	return (
		<div class="sheet-tabs" data-task-bar>
			{tab('panel', tabs.panel, sheet === 'panel')}
			{has('desk') && tab('desk', tabs.desk, sheet === 'desk')}
			{has('cables') && tab('cables', parts.cables, sheet === 'tools' && tool === 'cables')}
			{first &&
				tab(
					more.find((id) => id === tool) ?? first,
					more.length > 1 ? tabs.more : parts[first],
					sheet === 'tools' && tool !== 'cables',
				)}
		</div>
	);
}

/** What is brought up is read from its top: where the page has been scrolled past that, it goes back there. */
function toTop(): void {
	const stage = document.querySelector('.stage');
	if (stage && stage.getBoundingClientRect().top < 0) stage.scrollIntoView();
}
