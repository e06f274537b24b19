import type { JSX } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import { checkWords as words } from '#words/plan/index.ts';
import { isOff, isSeen, type PlanRow, profileOf, sawPanels, shortestWalk } from '../../../shared/plan/index.ts';
import { openEngine } from '../../engine/index.ts';
import { Button, CautionLine, Live, Notice, Title } from '../../ui/index.ts';
import { CheckCard } from './CheckCard.tsx';
import { Choices } from './Choices.tsx';
import { FoundList } from './FoundList.tsx';
import type { PlanStore } from './store.ts';
import { cautionsOf, modeTitle, threeDigits } from './view.ts';

const makeAsk = () => openEngine().ask;

/** The rig against the desk: one panel after another along the shortest walk, and what differs. What was seen is kept as what a panel shows. */
export default function DeskCheck({ store }: { store: PlanStore }): JSX.Element {
	const { plan } = store;
	const id = useId();
	const [ask] = useState(makeAsk);
	/** Metres along the room where one stands. */
	const [at, stand] = useState(0);
	const [left, leave] = useState<ReadonlySet<string>>(new Set());
	const [[said, turn], say] = useState<readonly [string, number]>(['', 0]);
	const walk = useMemo(() => {
		const open = plan.rows.filter((row) => !isSeen(row) && !left.has(row.id));
		return shortestWalk(open, at);
	}, [plan, left, at]);
	if (plan.source === 'leader') return <p>{words.leader}</p>;
	if (plan.rows.length === 0) return <p>{words.none}</p>;
	const saw = (row: PlanRow, shows: NonNullable<PlanRow['shows']>): void => {
		store.change((before) => sawPanels(before, new Set([row.id]), shows));
		stand(row.place.x);
		const pair = words.pair(modeTitle(profileOf(plan, row.profile), shows.mode), threeDigits(shows.address));
		say([words.noted(row.name, pair), turn + 1]);
	};
	const [next] = walk;
	const done = plan.rows.filter(isSeen);
	const off = done.filter(isOff);
	const far = Math.max(...plan.rows.map(({ place }) => place.x));
	const again = (rows: readonly PlanRow[]): void => {
		const ids = new Set(rows.map((row) => row.id));
		store.change((before) => sawPanels(before, ids, null));
		leave(new Set([...left].filter((row) => !ids.has(row))));
	};
	return (
		<section class="rig-check-desk" aria-labelledby={`${id} title`}>
			<p class="rig-soft">{words.lead}</p>
			<div class="rig-field">
				<label for={id}>{words.stand}</label>
				<select id={id} value={String(at)} onChange={(event) => stand(Number(event.currentTarget.value))}>
					<option value="0">{words.desk}</option>
					<Choices
						of={[...new Map(plan.rows.map(({ name, place }) => [place.x, name]))]
							.filter(([x]) => x > 0)
							.toSorted(([a], [b]) => a - b)
							.map(([x, name]) => ({ value: String(x), name: x === far ? `${words.far} (${name})` : name }))}
						value={String(at)}
					/>
				</select>
			</div>
			<p>
				<strong id={`${id} title`}>{words.progress(done.length, plan.rows.length, off.length)}</strong>
			</p>
			{next ? (
				<CheckCard
					key={next.id}
					{...{ plan, ask }}
					row={next}
					takesFocus={turn > 0 || left.size > 0}
					metres={Math.abs(next.place.x - at)}
					onSaw={(shows) => saw(next, shows)}
					onLater={() => leave(new Set([...left, next.id]))}
				/>
			) : (
				<Notice kind={off.length === 0 && left.size === 0 ? 'good' : 'plain'}>
					<p>{left.size > 0 ? words.left(left.size) : off.length === 0 ? words.allSame : words.all}</p>
					<div class="rig-ways">
						{left.size > 0 && <Button onClick={() => leave(new Set())}>{words.leftDo}</Button>}
						<Button onClick={() => again(plan.rows)}>{words.again}</Button>
					</div>
				</Notice>
			)}
			<Title level={2}>{words.off}</Title>
			{off.length === 0 && <p>{words.offNone}</p>}
			<FoundList
				{...{ plan, ask }}
				onRight={(row) => saw(row, { mode: row.mode, address: row.address })}
				onAgain={(row) => again([row])}
			/>
			{cautionsOf(plan, plan.rows).map((each) => (
				<CautionLine key={each} caution={cautions[each]} siteFirst={siteFirst} />
			))}
			<Live text={said} turn={turn} />
		</section>
	);
}
