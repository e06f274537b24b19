import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { planWords, startWords } from '#words/plan/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { type Plan, problemsOf } from '../../../shared/plan/index.ts';
import { PROFILE_IDS, profileAtHand } from '../../../shared/profile/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, CautionLine, Dialog, Field, Live, Notice } from '../../ui/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { Figures } from './Figures.tsx';
import { benchAddress, finderOn, mostOnBench } from './handing.ts';
import type { RigHold } from './keep.ts';
import { Papers, Paste, Send } from './lazily.tsx';
import { Problems } from './Problems.tsx';
import { Rows } from './Rows.tsx';
import { Ruler } from './Ruler.tsx';
import { Rules } from './Rules.tsx';
import { type PlanStore, usePlan } from './store.ts';
import { cautionsOf, withMore } from './view.ts';

const TABS = ['plan', 'slips', 'labels', 'patch'] as const;
type Tab = (typeof TABS)[number];

interface Props {
	start: Plan;
	hold: RigHold | null;
	onClose: () => void;
}

/** A plan at work. */
export default function PlanView({ start, hold, onClose }: Props): JSX.Element {
	const store = usePlan(start, hold);
	const [tab, setTab] = useState<Tab>('plan');
	const [picked, pick] = useState<string | null>(null);
	const { plan } = store;
	const problems = useMemo(() => problemsOf(plan), [plan]);
	return (
		<>
			<Head
				store={store}
				onClose={() => {
					// the list of kept rigs comes next
					store.keep();
					onClose();
				}}
			/>
			<nav class="rig-tabs no-print" aria-label={planWords.tabsLabel}>
				{TABS.map((each) => (
					<button key={each} type="button" class="rig-tab" aria-pressed={tab === each} onClick={() => setTab(each)}>
						{planWords.tabs[each]}
					</button>
				))}
			</nav>
			{tab === 'plan' ? (
				<>
					<Ruler plan={plan} problems={problems} onPick={pick} />
					<div class="rig-body">
						<Problems store={store} problems={problems} />
						<div class="rig-main">
							<Rows store={store} problems={problems} picked={picked} onPick={pick} />
							<Add store={store} />
						</div>
						<div class="rig-side">
							<Rules store={store} />
							<Cautions plan={plan} />
							<Figures plan={plan} />
						</div>
					</div>
				</>
			) : (
				<Papers plan={plan} kind={tab} />
			)}
		</>
	);
}

/** What hands are about to touch on this rig, where the plan is made. */
function Cautions({ plan }: { plan: Plan }): JSX.Element {
	return (
		<div class="rig-cautions">
			{cautionsOf(plan, plan.rows).map((id) => (
				<CautionLine key={id} caution={cautions[id]} siteFirst={siteFirst} />
			))}
		</div>
	);
}

function Head({ store, onClose }: { store: PlanStore; onClose: () => void }): JSX.Element {
	const { plan, kept } = store;
	const [open, setOpen] = useState<'send' | 'dark' | 'remove' | null>(null);
	const [trouble, tell] = useState<string | null>(null);
	const go = (act: () => Promise<string | null>): void => {
		tell(null);
		const fits = async (): Promise<void> => {
			const most = await mostOnBench();
			if (plan.rows.length > most) return tell(planWords.tooMany(plan.rows.length, most));
			const address = await act();
			if (address === null) tell(planWords.refused);
			else location.href = address;
		};
		fits().catch(async (error) => tell(isInputError(error) ? await errorTextLater(error) : planWords.failed));
	};
	return (
		<div class="rig-head no-print">
			<Field
				label={planWords.name}
				value={plan.name}
				maxLength={60}
				onChange={(event) => {
					const name = event.currentTarget.value.trim();
					if (name !== '') store.change((before) => ({ ...before, name }));
				}}
			/>
			<div class="rig-ways">
				<Button disabled={!store.canUndo} onClick={store.undo}>
					{planWords.undo}
				</Button>
				<Button disabled={plan.rows.length === 0} onClick={() => go(() => benchAddress(plan))}>
					{planWords.onBench}
				</Button>
				<Button disabled={plan.rows.length === 0} onClick={() => setOpen('dark')}>
					{planWords.dark}
				</Button>
				<Button onClick={() => setOpen('send')}>{planWords.send}</Button>
				<Button look="quiet" onClick={onClose}>
					{planWords.another}
				</Button>
				<Button look="quiet" onClick={() => setOpen('remove')}>
					{planWords.remove}
				</Button>
			</div>
			{kept !== 'kept' && (
				<Notice kind="wrong">
					{kept === 'copy' ? planWords.copy : kept === 'full' ? planWords.noRoom : planWords.refused}
				</Notice>
			)}
			{trouble !== null && (
				<Notice kind="wrong">
					<p role="alert">{trouble}</p>
				</Notice>
			)}
			{open === 'send' && <Send plan={plan} onClose={() => setOpen(null)} />}
			{open === 'dark' && (
				<Dialog open onClose={() => setOpen(null)} title={planWords.darkWhich} closeWords={planWords.close}>
					<div class="rig-ways">
						{plan.rows.map(({ id, name }) => (
							<Button
								key={id}
								aria-label={planWords.darkGo(name)}
								onClick={() => {
									setOpen(null);
									go(async () => ((await finderOn(plan, id, DEVICE, Date.now())) ? '/finder/' : null));
								}}
							>
								{name}
							</Button>
						))}
					</div>
				</Dialog>
			)}
			{open === 'remove' && (
				<Dialog open onClose={() => setOpen(null)} title={planWords.remove} closeWords={planWords.close}>
					<Button
						onClick={() => {
							store.forget();
							onClose();
						}}
					>
						{planWords.removeSure}
					</Button>
				</Dialog>
			)}
		</div>
	);
}

/** More of a kind, or more of a list. */
function Add({ store }: { store: PlanStore }): JSX.Element {
	const [pastes, paste] = useState(false);
	const [said, say] = useState('');
	return (
		<div class="rig-ways rig-add">
			{[...PROFILE_IDS.flatMap((id) => profileAtHand(id) ?? []), ...store.plan.profiles].map((profile) => (
				<Button
					key={profile.id}
					onClick={() => {
						store.change((plan) => withMore(plan, [{ profile: profile.id }]));
						say(startWords.openKept(profile.name, store.plan.rows.length + 1));
					}}
				>
					+ {profile.name}
				</Button>
			))}
			<Button onClick={() => paste(true)}>{planWords.paste}</Button>
			<Live text={said} />
			{pastes && (
				<Paste
					plan={store.plan}
					onAdd={(plan) => {
						paste(false);
						store.change(() => plan);
					}}
					onClose={() => paste(false)}
				/>
			)}
		</div>
	);
}
