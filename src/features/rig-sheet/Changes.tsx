import type { JSX } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { type CautionId, cautions, siteFirst } from '#words/cautions/index.ts';
import { changeWords, planWords } from '#words/plan/index.ts';
import {
	changesOf,
	type Plan,
	type PlanChanges,
	profileOf,
	readDigest,
	swapped,
	verdictOn,
} from '../../../shared/plan/index.ts';
import { PROFILE_IDS, profileAtHand } from '../../../shared/profile/index.ts';
import { Button, CautionBox, CautionLine, Field, Live, Notice, Title } from '../../ui/index.ts';
import { doingText, endName, sheetName } from './changesView.ts';
import { Papers } from './goingOut.tsx';
import type { PlanStore } from './store.ts';
import { cautionsOf, modeTitle, threeDigits } from './view.ts';

/** What changed since sheets were printed or lights set: what to do at the lights, and which sheets are wrong. */
export default function Changes({ store }: { store: PlanStore }): JSX.Element {
	const { plan, before } = store;
	const [sheets, show] = useState<'slips' | 'labels' | null>(null);
	const changes = useMemo(() => before && changesOf(before, plan), [before, plan]);
	const isSame =
		changes !== null && [changes.rows, changes.pull, changes.run].every((each) => each.length === 0) && !changes.patch;
	const wrong = {
		slips: changes?.rows.flatMap(({ slip, row }) => (slip ? [row.id] : [])) ?? [],
		labels: changes?.rows.flatMap(({ label, row }) => (label ? [row.id] : [])) ?? [],
	};
	return (
		<>
			<section class="rig-changes no-print" aria-label={planWords.tabs.changes}>
				<Swap store={store} />
				<Title level={2}>{changeWords.heading}</Title>
				{changes === null || before === null ? (
					<p>{changeWords.none}</p>
				) : isSame ? (
					<Notice kind="good">{changeWords.same}</Notice>
				) : (
					<>
						<p>{changeWords.since}</p>
						<Lights plan={plan} before={before} changes={changes} />
						<Cables plan={plan} before={before} changes={changes} />
						<h3>{changeWords.sheets}</h3>
						{wrong.slips.length + wrong.labels.length === 0 ? (
							<p>{changeWords.sheetsNone}</p>
						) : (
							<>
								<p>{changeWords.throwAway}</p>
								<div class="rig-ways">
									{(['slips', 'labels'] as const).map((each) => (
										<Button
											key={each}
											aria-pressed={sheets === each}
											disabled={wrong[each].length === 0}
											onClick={() => show(sheets === each ? null : each)}
										>
											{changeWords[each](wrong[each].length)}
										</Button>
									))}
								</div>
							</>
						)}
						{changes.patch && <p>{changeWords.patch}</p>}
						{changes.renumbered > 0 && <p>{changeWords.renumbered(changes.renumbered)}</p>}
						<div class="rig-ways">
							<Button
								onClick={() => {
									show(null);
									store.begin();
								}}
							>
								{changeWords.done}
							</Button>
							<span class="rig-soft">{changeWords.doneWords}</span>
						</div>
					</>
				)}
				<MarkCheck plan={plan} before={before} />
			</section>
			{before && sheets !== null && wrong[sheets].length > 0 && (
				<Papers key={sheets} plan={plan} kind={sheets} changed={{ only: wrong[sheets], before }} />
			)}
		</>
	);
}

interface ChangesProps {
	plan: Plan;
	before: Plan;
	changes: PlanChanges;
}

/** What can kill at these very steps is said whole, the rest in lines that open. */
const WHOLE: ReadonlySet<CautionId> = new Set<CautionId>(['hanging', 'height', 'mains']);

function Lights({ plan, before, changes }: ChangesProps): JSX.Element | null {
	const touched = changes.rows.map(({ row }) => row);
	const old = before.rows.filter(({ id }) => touched.some((row) => row.id === id));
	if (touched.length === 0) return null;
	const care = new Set<CautionId>(['live-show', 'lifting', ...cautionsOf(plan, touched), ...cautionsOf(before, old)]);
	return (
		<>
			<h3>{changeWords.lights}</h3>
			<div class="rig-cautions">
				{[...care].map((id) => {
					const its = { caution: cautions[id], siteFirst };
					return WHOLE.has(id) ? <CautionBox key={id} {...its} level={2} /> : <CautionLine key={id} {...its} />;
				})}
			</div>
			<ul class="change-list">
				{changes.rows.map((change) => {
					const { row, is } = change;
					const unit = profileOf(is === 'gone' ? before : plan, row.profile)?.name ?? row.profile;
					return (
						<li key={`${is} ${row.id}`}>
							<p>
								<strong>{changeWords.light(row.name, unit)}</strong> <span class="rig-soft">{changeWords.is[is]}</span>
							</p>
							<ul>
								{doingText(plan, before, change).map((each) => (
									<li key={each}>{each}</li>
								))}
							</ul>
						</li>
					);
				})}
			</ul>
		</>
	);
}

function Cables({ plan, before, changes }: ChangesProps): JSX.Element | null {
	const { pull, run, bring, terminate, unterminate } = changes;
	const plans = [plan, before];
	const nameOf = (row: string): string => endName(plans, { is: 'row', row });
	const lines = [
		...pull.map(({ from, to, length }) => changeWords.pull(endName(plans, from), endName(plans, to), length)),
		...run.map(({ from, to, length }) => changeWords.run(endName(plans, from), endName(plans, to), length)),
		...unterminate.map((row) => changeWords.unterminate(nameOf(row))),
		...terminate.map((row) => changeWords.terminate(nameOf(row))),
	];
	if (lines.length === 0) return null;
	return (
		<>
			<h3>{changeWords.cables}</h3>
			<ul>
				{lines.map((each) => (
					<li key={each}>{each}</li>
				))}
			</ul>
			{run.length > 0 && <p>{changeWords.bring(bring)}</p>}
		</>
	);
}

/** One fixture for a spare. */
function Swap({ store }: { store: PlanStore }): JSX.Element | null {
	const { plan } = store;
	const id = useId();
	const [row, pickRow] = useState(plan.rows[0]?.id ?? '');
	const [profile, pickProfile] = useState<string>(PROFILE_IDS[0] ?? '');
	const [mode, pickMode] = useState('');
	const [[said, turn], say] = useState<readonly [string, number]>(['', 0]);
	if (plan.rows.length === 0) return null;
	const profiles = [...plan.profiles, ...PROFILE_IDS.flatMap((each) => profileAtHand(each) ?? [])];
	const spare = profileOf(plan, profile);
	const swap = (): void => {
		const next = swapped(plan, row, profile, mode === '' ? undefined : mode);
		store.change(() => next);
		const its = next.rows.find((each) => each.id === row);
		if (its && spare)
			say([changeWords.swapped(its.name, spare.name, modeTitle(spare, its.mode), threeDigits(its.address)), turn + 1]);
	};
	const picks = [
		{
			label: changeWords.which,
			value: row,
			pick: pickRow,
			from: plan.rows.map((each) => [each.id, each.name] as const),
		},
		{
			label: changeWords.spare,
			value: profile,
			pick: (next: string) => {
				pickProfile(next);
				pickMode('');
			},
			from: profiles.map((each) => [each.id, each.name] as const),
		},
		{
			label: changeWords.mode,
			value: mode,
			pick: pickMode,
			from: [
				['', changeWords.modeFits] as const,
				...(spare?.modes ?? []).map((each) => [each.id, modeTitle(spare, each.id)] as const),
			],
		},
	];
	return (
		<>
			<Title level={2}>{changeWords.swapHeading}</Title>
			<p>{changeWords.swapWords}</p>
			<div class="rig-fields">
				{picks.map(({ label, value, pick, from }, i) => (
					<div key={label} class="rig-field">
						<label for={`${id}-${i}`}>{label}</label>
						<select id={`${id}-${i}`} value={value} onChange={(event) => pick(event.currentTarget.value)}>
							{from.map(([key, words]) => (
								<option key={key} value={key}>
									{words}
								</option>
							))}
						</select>
					</div>
				))}
			</div>
			<div class="rig-ways">
				<Button look="main" onClick={swap}>
					{changeWords.swap}
				</Button>
				<span class="rig-soft">{changeWords.more}</span>
			</div>
			{said !== '' && <p aria-hidden="true">{said}</p>}
			<Live text={said} turn={turn} />
		</>
	);
}

/** Whether a sheet in the hand is old, by its mark. */
function MarkCheck({ plan, before }: { plan: Plan; before: Plan | null }): JSX.Element {
	const [text, type] = useState('');
	const [asked, ask] = useState<string | null>(null);
	const digest = asked === null ? null : readDigest(asked);
	const verdict = digest === null ? null : verdictOn(digest, plan, before);
	return (
		<>
			<Title level={2}>{changeWords.markHeading}</Title>
			<form
				class="rig-other"
				onSubmit={(event) => {
					event.preventDefault();
					ask(text);
				}}
			>
				<Field
					label={changeWords.markAsk}
					hint={changeWords.markHint}
					value={text}
					autocomplete="off"
					autocapitalize="characters"
					spellcheck={false}
					error={asked !== null && digest === null ? changeWords.markBad : undefined}
					onInput={(event) => {
						type(event.currentTarget.value);
						ask(null);
					}}
				/>
				<Button type="submit">{changeWords.markDo}</Button>
			</form>
			<div role="status">
				{verdict && (
					<Notice kind={verdict.is === 'current' ? 'good' : 'wrong'}>
						{verdict.is === 'unknown'
							? changeWords.verdict.unknown
							: changeWords.verdict[verdict.is](sheetName([plan, ...(before ? [before] : [])], verdict.of))}
					</Notice>
				)}
			</div>
		</>
	);
}
