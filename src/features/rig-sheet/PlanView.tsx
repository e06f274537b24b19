import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { planWords, startWords, tickWords } from '#words/plan/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { type Plan, problemsOf } from '../../../shared/plan/index.ts';
import { PROFILE_IDS, profileAtHand } from '../../../shared/profile/index.ts';
import { DEVICE } from '../../storage/index.ts';
import { Button, CautionLine, Dialog, Field, Live, Notice } from '../../ui/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { Figures } from './Figures.tsx';
import { Papers, Send } from './goingOut.tsx';
import { useLater } from './growing.ts';
import { benchAddress, finderOn, mostOnBench } from './handing.ts';
import type { Came, Opened } from './incoming.ts';
import { Changes, DeskCheck, LightSheet, Paste, Practise, TickOff } from './lazily.tsx';
import { Problems } from './Problems.tsx';
import { Rows } from './Rows.tsx';
import { Ruler } from './Ruler.tsx';
import { Rules } from './Rules.tsx';
import { type PlanStore, usePlan } from './store.ts';
import { cautionsOf, withMore } from './view.ts';

const TABS = ['plan', 'slips', 'labels', 'patch', 'line', 'load', 'light', 'ticks', 'check', 'changes'] as const;
type Tab = (typeof TABS)[number];

interface Props {
	opened: Opened;
	onClose: () => void;
}

/** Sheets that the address names: whoever comes back from the finder, or to a phone gone dark, goes on where they were. */
const IN_ADDRESS: readonly Tab[] = ['ticks', 'check', 'changes'];
/** Sheets for one thumb in the dark: they begin at the top of the glass. */
const AT_THE_LIGHTS: readonly Tab[] = ['ticks', 'check'];
const tabInAddress = (): Tab => IN_ADDRESS.find((each) => location.hash === `#${each}`) ?? 'plan';

/** A plan at work. */
export default function PlanView({ opened, onClose }: Props): JSX.Element {
	const store = usePlan(opened.plan, opened.hold, opened.before);
	const [tab, setTab] = useState<Tab>(() => (opened.came?.count ? 'ticks' : tabInAddress()));
	const [picked, pick] = useState<string | null>(null);
	const [trouble, tell] = useState<string | null>(null);
	const { plan, kept } = store;
	const problems = useMemo(() => problemsOf(plan), [plan]);
	// the same elements as before wherever the plan is the same: the page then leaves them alone
	const ruler = useMemo(() => <Ruler plan={plan} problems={problems} onPick={pick} />, [plan, problems]);
	const toSortOut = useMemo(() => <Problems store={store} problems={problems} />, [plan, problems]);
	const side = useMemo(
		() => (
			<>
				<Rules store={store} />
				<Cautions plan={plan} />
			</>
		),
		[plan],
	);
	const late = useLater(plan);
	const sums = useMemo(() => <Figures plan={late} />, [late]);
	const begin = (): void => {
		if (store.before === null) store.begin();
	};
	useEffect(() => {
		// lights were set by it elsewhere
		if (opened.came?.count) begin();
	}, []);
	const go = goer(plan, tell);
	const show = (next: Tab): void => {
		history.replaceState(null, '', IN_ADDRESS.includes(next) ? `#${next}` : location.pathname);
		setTab(next);
	};
	return (
		<>
			{!AT_THE_LIGHTS.includes(tab) && (
				<Head
					store={store}
					go={go}
					onClose={() => {
						// the list of kept rigs comes next
						store.keep();
						history.replaceState(null, '', location.pathname);
						onClose();
					}}
				/>
			)}
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
			{opened.came && <CameIn came={opened.came} store={store} />}
			<nav class="rig-tabs no-print" aria-label={planWords.tabsLabel}>
				{TABS.map((each) => (
					<button key={each} type="button" class="rig-tab" aria-pressed={tab === each} onClick={() => show(each)}>
						{planWords.tabs[each]}
					</button>
				))}
			</nav>
			{tab === 'plan' ? (
				<>
					{ruler}
					<div class="rig-body">
						{toSortOut}
						<div class="rig-main">
							<Rows store={store} problems={problems} picked={picked} onPick={pick} />
							<Add store={store} />
						</div>
						<div class="rig-side">
							{side}
							{sums}
						</div>
					</div>
				</>
			) : tab === 'ticks' ? (
				<TickOff store={store} onDark={(row) => go(() => finderAt(plan, store.id, row))} />
			) : tab === 'check' ? (
				<DeskCheck store={store} />
			) : tab === 'changes' ? (
				<Changes store={store} />
			) : tab === 'light' ? (
				<LightSheet store={store} />
			) : (
				<Papers plan={plan} kind={tab} onPrint={begin} />
			)}
		</>
	);
}

/** The finder's address once it will begin on a row; null where the device keeps nothing. */
const finderAt = async (plan: Plan, id: string, row: string): Promise<string | null> =>
	(await finderOn(plan, id, row, DEVICE, Date.now())) ? '/finder/' : null;

/** Goes on to bench or finder with this rig. @param tell why it cannot be; null to take that back */
function goer(plan: Plan, tell: (trouble: string | null) => void): (act: () => Promise<string | null>) => void {
	return (act) => {
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
}

/** What a link or a file brought to this rig. */
function CameIn({ came, store }: { came: Came; store: PlanStore }): JSX.Element {
	const [used, use] = useState(false);
	const { plan, count, by } = came;
	return (
		<div class="no-print">
			<Notice kind={count === null ? 'wrong' : 'plain'}>
				<p role="status">{count === null ? tickWords.broughtNot : tickWords.brought(count, by)}</p>
				{plan && (
					<>
						<p>{used ? tickWords.usedPlan : tickWords.otherPlan}</p>
						<Button
							disabled={used}
							onClick={() => {
								store.change(() => plan);
								use(true);
							}}
						>
							{tickWords.usePlan}
						</Button>
					</>
				)}
			</Notice>
		</div>
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

interface HeadProps {
	store: PlanStore;
	go: (act: () => Promise<string | null>) => void;
	onClose: () => void;
}

function Head({ store, go, onClose }: HeadProps): JSX.Element {
	const { plan } = store;
	const [open, setOpen] = useState<'send' | 'dark' | 'practise' | 'remove' | null>(null);
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
				<Button disabled={plan.rows.length === 0} onClick={() => setOpen('practise')}>
					{planWords.practise}
				</Button>
				<Button onClick={() => setOpen('send')}>{planWords.send}</Button>
				<Button look="quiet" onClick={onClose}>
					{planWords.another}
				</Button>
				<Button look="quiet" onClick={() => setOpen('remove')}>
					{planWords.remove}
				</Button>
			</div>
			{open === 'send' && <Send plan={plan} id={store.id} before={store.before} onClose={() => setOpen(null)} />}
			{open === 'dark' && (
				<Dialog open onClose={() => setOpen(null)} title={planWords.darkWhich} closeWords={planWords.close}>
					<div class="rig-ways">
						{plan.rows.map(({ id, name }) => (
							<Button
								key={id}
								aria-label={planWords.darkGo(name)}
								onClick={() => {
									setOpen(null);
									go(() => finderAt(plan, store.id, id));
								}}
							>
								{name}
							</Button>
						))}
					</div>
				</Dialog>
			)}
			{open === 'practise' && (
				<Dialog open onClose={() => setOpen(null)} title={planWords.practise} closeWords={planWords.close}>
					<Practise plan={plan} />
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
