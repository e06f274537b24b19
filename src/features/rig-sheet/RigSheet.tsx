import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { planPage, planWords, startWords } from '#words/plan/index.ts';
import { NotFetched } from '../../../shared/error/index.ts';
import type { Plan } from '../../../shared/plan/index.ts';
import { loadProfile, PROFILE_IDS } from '../../../shared/profile/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { laterWith, Notice } from '../../ui/index.ts';
import { holdsPlan } from './handing.ts';
import type { Came, Opened } from './incoming.ts';
import { keptRigs, rigText, setRigAside } from './keep.ts';
import type { PlanReading } from './reading.ts';
import { Start } from './Start.tsx';

/** Fetched once there is a plan: to begin one takes little. */
const PlanView = laterWith(planWords, 'coming')(() => import('./PlanView.tsx'));

/** The rig whose ticks an address asks for, as the finder's does; null for none. */
const ticksAsked = (fragment: string): string | null => /^#ticks=([0-9a-f]{16})$/.exec(fragment)?.[1] ?? null;

const fresh = (plan: Plan): Opened => ({ plan, hold: null, before: null, came: null });

/** Tonight's rig: begins a plan or goes on with the last one. */
export function RigSheet(): JSX.Element {
	const [[opened, turn], set] = useState<[Opened | null, number]>([null, 0]);
	const [ready, setReady] = useState(false);
	const [trouble, tell] = useState<string | null>(null);
	const open = (next: Opened | null): void => set(([, before]) => [next, before + 1]);
	/** With every bundled fixture at hand, since any may be added. */
	const openPlan = async (next: Opened): Promise<void> => {
		await Promise.all(PROFILE_IDS.map(loadProfile));
		open(next);
	};
	/** Puts what was read on the page; a sentence where it cannot be. @returns what it brought to a rig that is here already */
	const take = async (found: PlanReading | null, bad: string): Promise<Came | null> => {
		if (found?.is === 'plan') {
			tell(null);
			const { openedFrom } = await import('./incoming.ts');
			const next = await openedFrom(DEVICE, found, Date.now());
			await openPlan(next);
			return next.came;
		}
		tell(found?.is === 'newer' ? startWords.newer : bad);
		return null;
	};
	const openKept = async (id: string): Promise<void> => {
		const text = rigText(DEVICE, id);
		if (text === null) return;
		const { readPlanText } = await import('./reading.ts');
		const found = await readPlanText(text);
		if (found.is === 'plan')
			await openPlan({ plan: found.plan, hold: { id, from: text }, before: found.before ?? null, came: null });
		else {
			if (found.is === 'damaged') setRigAside(DEVICE, id, text, Date.now());
			tell(found.is === 'newer' ? startWords.newer : startWords.damaged);
		}
	};
	const guarded = (act: () => Promise<void>): Promise<void> =>
		act().catch((error) => {
			if (!(error instanceof NotFetched || error instanceof TypeError)) throw error;
			tell(planWords.failed);
		});
	useEffect(() => {
		const fromLink = async (): Promise<void> => {
			const { hash } = location;
			const { readPlanLink } = await import('./reading.ts');
			const found = await readPlanLink(hash);
			// from here on it is kept on the device: loading the page again must not bring the link back, but the sheet that it opened
			const came = await take(found, startWords.badLink);
			if (found.is === 'plan') history.replaceState(null, '', `${location.pathname}${came?.count ? '#ticks' : ''}`);
		};
		void guarded(async () => {
			const rigs = keptRigs(DEVICE);
			const asked = ticksAsked(location.hash);
			const last = rigs.find(({ id }) => id === asked) ?? rigs[0];
			if (asked !== null) history.replaceState(null, '', '#ticks');
			if (holdsPlan(location.hash)) await fromLink();
			else if (last) await openKept(last.id);
			setReady(true);
		});
		const hear = (): void => {
			if (holdsPlan(location.hash)) void guarded(fromLink);
		};
		addEventListener('hashchange', hear);
		return () => removeEventListener('hashchange', hear);
	}, []);
	const said = trouble !== null && (
		<Notice kind="wrong">
			<p role="alert">{trouble}</p>
		</Notice>
	);
	if (!ready) return said || <p class="coming">{planPage.loading}</p>;
	return (
		<div class="rigsheet" data-ready>
			{said}
			{opened ? (
				<PlanView key={turn} opened={opened} onClose={() => open(null)} />
			) : (
				<Start
					onPlan={(plan) => void guarded(() => openPlan(fresh(plan)))}
					onKept={(id) => void guarded(() => openKept(id))}
					onRead={(read, bad) =>
						void guarded(async () => {
							await take(await read(), bad);
						})
					}
					onTrouble={tell}
					guarded={guarded}
				/>
			)}
		</div>
	);
}
