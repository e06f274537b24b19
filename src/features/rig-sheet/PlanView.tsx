import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { planWords, startWords, tickWords } from '#words/plan/index.ts';
import { isInputError } from '../../../shared/error/index.ts';
import { type Plan, problemsOf } from '../../../shared/plan/index.ts';
import { PROFILE_IDS, profileAtHand } from '../../../shared/profile/index.ts';
import { Button, CautionLine, Live, Notice } from '../../ui/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { Figures } from './Figures.tsx';
import { Papers } from './goingOut.tsx';
import { useGrown, useLater } from './growing.ts';
import { finderAt, Head } from './Head.tsx';
import { mostOnBench } from './handing.ts';
import type { Came, Opened } from './incoming.ts';
import { Changes, DeskCheck, LightSheet, Paste, TickOff } from './lazily.tsx';
import { Problems } from './Problems.tsx';
import { Rows } from './Rows.tsx';
import { Ruler } from './Ruler.tsx';
import { Rules } from './Rules.tsx';
import { type PlanStore, usePlan } from './store.ts';
import { cautionsOf, movedTo, withMore } from './view.ts';

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
	// which one is pressed shows at once, and then its sheet takes the place of the one before
	const sheet = useLater(tab);
	const late = useLater(plan);
	const sums = useMemo(() => <Figures plan={late} />, [late]);
	const begin = (): void => {
		if (store.before === null) store.begin();
	};
	useEffect(() => {
		// lights were set by it elsewhere
		if (opened.came?.count) begin();
	}, []);
	const move = (row: string, x: number): void => store.change((before) => movedTo(before, row, x));
	const go = goer(plan, tell);
	const show = (next: Tab): void => {
		history.replaceState(null, '', IN_ADDRESS.includes(next) ? `#${next}` : location.pathname);
		setTab(next);
	};
	return (
		<>
			{!AT_THE_LIGHTS.includes(sheet) && (
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
			<Loose store={store} />
			{opened.came && <CameIn came={opened.came} store={store} />}
			<nav class="rig-tabs no-print" aria-label={planWords.tabsLabel}>
				{TABS.map((each) => (
					<button key={each} type="button" class="rig-tab" aria-pressed={tab === each} onClick={() => show(each)}>
						{planWords.tabs[each]}
					</button>
				))}
			</nav>
			{sheet === 'plan' ? (
				<>
					{ruler}
					<div class="rig-body">
						{toSortOut}
						<div class="rig-main">
							<Rows store={store} problems={problems} picked={picked} onPick={pick} />
							<Add store={store} />
						</div>
						<div class="rig-side">
							<OneByOne parts={[null, side, sums]} />
						</div>
					</div>
				</>
			) : sheet === 'ticks' ? (
				<TickOff store={store} onDark={(row) => go(() => finderAt(plan, store.id, row))} />
			) : sheet === 'check' ? (
				<DeskCheck store={store} />
			) : sheet === 'changes' ? (
				<Changes store={store} />
			) : sheet === 'light' ? (
				<LightSheet store={store} />
			) : (
				<Papers plan={plan} kind={sheet} onMove={move} onPrint={begin} />
			)}
		</>
	);
}

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

/** Most names of cables that are told at once. */
const MOST_NAMED = 12;

/** Cables that a change took from where somebody said they come from: nobody has looked where they lie now. */
function Loose({ store: { plan, loose, told } }: { store: PlanStore }): JSX.Element {
	const names = plan.rows.flatMap(({ id, name }) => (loose.includes(id) ? [name] : []));
	const says =
		names.length === 0 ? '' : planWords.loose(names.slice(0, MOST_NAMED), Math.max(0, names.length - MOST_NAMED));
	return (
		<div class="no-print">
			<Live text={says} />
			{says !== '' && (
				<Notice kind="wrong">
					<p aria-hidden="true">{says}</p>
					<Button look="quiet" onClick={told}>
						{planWords.close}
					</Button>
				</Notice>
			)}
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

/** Parts of a page that come one after another, a picture each. */
function OneByOne({ parts }: { parts: readonly (JSX.Element | null)[] }): JSX.Element {
	const count = useGrown(parts.length, 1);
	return <>{parts.slice(0, count)}</>;
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
