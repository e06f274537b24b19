import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { CautionId } from '#words/cautions/index.ts';
import { stepShort, tickWords, warningOf, warningWords } from '#words/plan/index.ts';
import {
	alongRoom,
	boardOf,
	circuitKey,
	goesWith,
	linksOf,
	litCircuits,
	nextOf,
	type PlanRow,
	planSays,
	type RowStep,
	stepsOf,
	type TickStep,
	walkOf,
	withNote,
	withTick,
} from '../../../shared/plan/index.ts';
import { DEVICE, freshId } from '../../storage/index.ts';
import { Button, Field, Live, Notice } from '../../ui/index.ts';
import { Found, Send } from './goingOut.tsx';
import { useGrown } from './growing.ts';
import type { PlanStore } from './store.ts';
import { TickBar } from './TickBar.tsx';
import { rowWarnings, TickCard, TickLine } from './TickCard.tsx';
import { TickFile } from './TickFile.tsx';
import { keepInitials, keptInitials, readInitials } from './ticksKeep.ts';
import { useTicks } from './ticksStore.ts';
import { useFinding } from './useFinding.ts';

interface Props {
	store: PlanStore;
	/** Opens the finder on a row. */
	onDark: (row: string) => void;
}

const keyOf = ({ row, step }: RowStep): string => `${step} ${row}`;

/** The rig at the lights: every fixture's steps to tick, what is next, notes, and what went wrong. */
export default function TickOff({ store, onDark }: Props): JSX.Element {
	const { plan } = store;
	const { ticks, kept, change } = useTicks(store.id);
	const { finding, close: closeFound } = useFinding(store.id);
	const [who, setWho] = useState(() => keptInitials(DEVICE));
	const [forgets, setForgets] = useState(false);
	const [open, setOpen] = useState<string | null>(null);
	const [left, leave] = useState<ReadonlySet<string>>(new Set());
	const [[said, turn], say] = useState<readonly [string, number]>(['', 0]);
	const [sends, send] = useState(false);
	/** The row at which each caution was first met in full: there it stays so. */
	const met = useRef(new Map<CautionId, string>());
	const list = useRef<HTMLOListElement>(null);
	const says = useMemo(() => planSays(plan), [plan]);
	const walk = useMemo(() => walkOf(plan), [plan]);
	const links = useMemo(() => linksOf(plan), [plan]);
	const board = useMemo(() => boardOf(says, ticks), [says, ticks]);
	const rows = useMemo(() => alongRoom(plan.rows).map((row) => ({ row, steps: stepsOf(plan, row) })), [plan]);
	const count = useGrown(rows.length);
	const lit = useMemo(() => litCircuits(plan, (row) => board.state(row, 'lit').standing !== 'open'), [plan, board]);
	const othersLit = ({ id, circuit }: PlanRow): boolean =>
		[...(lit.get(circuitKey(circuit)) ?? [])].some((each) => each !== id);
	const isLeft = (at: RowStep): boolean => left.has(keyOf(at));
	const next = nextOf(walk, board, isLeft);
	const lineOf = (row: PlanRow, steps: readonly TickStep[]) => ({
		row,
		steps,
		board,
		next: next?.row === row.id ? next.step : null,
		isCircuitLit: othersLit(row),
	});
	const nameOf = (row: string): string => plan.rows.find(({ id }) => id === row)?.name ?? row;
	const tell = (text: string): void => say(([, before]) => [text, before + 1]);
	// what is next stays in sight
	useEffect(() => {
		list.current?.querySelector('[data-next="true"]')?.scrollIntoView({ block: 'nearest' });
	}, [open, next?.row, next?.step]);

	const signed = () => ({ id: freshId(4), by: who ?? '', at: Date.now() });
	const done = useMemo(() => walk.filter(({ row, step }) => board.isDone(row, step)).length, [walk, board]);
	const tick = ({ row, step }: RowStep, on: boolean) => {
		if (store.before === null) store.begin();
		tell((on ? tickWords.ticked : tickWords.unticked)(stepShort[step], nameOf(row)));
		return change((all) =>
			goesWith(boardOf(says, all), row, step, on).reduce((so, each) => withTick(so, says, each, signed()), all),
		);
	};
	const tickNext = (at: RowStep): void => {
		const after = nextOf(walk, boardOf(says, tick(at, true)), isLeft);
		if (after) setOpen(after.row);
	};
	if (rows.length === 0) return <p>{tickWords.none}</p>;
	const gone = new Set([...ticks.ticks, ...ticks.notes].map(({ row }) => row).filter((row) => !says.has(row))).size;
	return (
		<section class="ticks" aria-label={plan.name}>
			<p class="rig-soft">{tickWords.lead}</p>
			{kept !== 'kept' && <Notice kind="wrong">{tickWords.kept[kept]}</Notice>}
			{forgets && <Notice kind="wrong">{tickWords.initialsNot}</Notice>}
			{who === null ? (
				<Initials
					onWho={(letters, isKept) => {
						setWho(letters);
						setForgets(!isKept);
					}}
				/>
			) : (
				<>
					{finding && (
						<Found
							key={finding.began}
							{...{ plan, board, finding }}
							onNote={(row, text, { isLit, reopens, plan: next }) => {
								store.change(() => next);
								if (isLit && store.before === null) store.begin();
								// a tick is of the plan as it is from here on
								const then = planSays(next);
								const moves = [
									...reopens.map((each) => ({ ...each, on: false })),
									...(isLit ? [{ row, step: 'lit' as const, on: true }] : []),
								];
								change((all) =>
									moves.reduce((so, each) => withTick(so, then, each, signed()), withNote(all, row, text, signed())),
								);
								tell(isLit ? tickWords.ticked(stepShort.lit, nameOf(row)) : tickWords.noted);
								setOpen(row);
							}}
							onPlan={(next) => store.change(() => next)}
							onClose={closeFound}
						/>
					)}
					<p class="ticks-progress">
						<strong>{tickWords.progress(done, walk.length)}</strong> {tickWords.walk}
					</p>
					<ol ref={list} class="tick-list">
						{rows.map(({ row, steps }, i) => {
							// those in hand are there from the first
							if (i >= count && row.id !== open && row.id !== next?.row) return null;
							const its = { plan, ...lineOf(row, steps) };
							return (
								<li key={row.id} class={open === row.id ? 'tick-open' : ''}>
									{open === row.id ? (
										<TickCard
											{...its}
											link={links.get(row.id) ?? null}
											met={met.current}
											onTick={(step, on) => tick({ row: row.id, step }, on)}
											onNote={(text) => {
												change((all) => withNote(all, row.id, text, signed()));
												tell(tickWords.noted);
											}}
											onDark={() => onDark(row.id)}
											onClose={() => setOpen(null)}
										/>
									) : (
										<TickLine {...its} onOpen={setOpen} />
									)}
								</li>
							);
						})}
					</ol>
					{gone > 0 && <p class="rig-soft">{tickWords.gone(gone)}</p>}
					<div class="rig-ways">
						<Button onClick={() => send(true)}>{tickWords.send}</Button>
						<TickFile id={store.id} onTicks={(more) => change(more)} />
					</div>
					<p class="rig-soft">
						{tickWords.as(who)}{' '}
						<Button look="quiet" onClick={() => setWho(null)}>
							{tickWords.change}
						</Button>
					</p>
					<TickBar
						next={next}
						name={next ? nameOf(next.row) : ''}
						isOpen={next?.row === open}
						warnings={rows.flatMap(({ row, steps }) =>
							row.id === open
								? rowWarnings(lineOf(row, steps)).map((each) => warningOf(row.name, warningWords[each]))
								: [],
						)}
						onTick={tickNext}
						onShow={setOpen}
						onLater={(at) => {
							const more = new Set([...left, keyOf(at)]);
							leave(more);
							const after = nextOf(walk, board, (each) => more.has(keyOf(each)));
							// all that is left was left for later: it is asked again from the start
							if (after && more.has(keyOf(after))) leave(new Set());
							if (after) setOpen(after.row);
						}}
					/>
				</>
			)}
			<Live text={said} turn={turn} />
			{sends && <Send plan={plan} id={store.id} before={store.before} ticks={ticks} onClose={() => send(false)} />}
		</section>
	);
}

/** Asked once on a device. */
function Initials({ onWho }: { onWho: (who: string, isKept: boolean) => void }): JSX.Element {
	const [text, type] = useState('');
	const [wrong, tell] = useState(false);
	return (
		<form
			class="rig-other"
			onSubmit={(event) => {
				event.preventDefault();
				const who = readInitials(text);
				tell(who === null);
				if (who === null) return;
				onWho(who, keepInitials(DEVICE, who));
			}}
		>
			<Field
				label={tickWords.initialsAsk}
				hint={tickWords.initialsHint}
				value={text}
				autocomplete="off"
				autocapitalize="characters"
				error={wrong ? tickWords.initialsBad : undefined}
				onInput={(event) => type(event.currentTarget.value)}
			/>
			<Button look="main" type="submit">
				{tickWords.initialsDo}
			</Button>
		</form>
	);
}
