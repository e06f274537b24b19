import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { pasteWords, planWords, tableWords } from '#words/plan/index.ts';
import { type Plan, patchTable, type RigTicks } from '../../../shared/plan/index.ts';
import { DEVICE, saveText } from '../../storage/index.ts';
import { Button, Dialog, Field, Live, laterWith } from '../../ui/index.ts';
import { planLink } from './handing.ts';
import { planText } from './keep.ts';
import { ticksKeeper } from './ticksKeep.ts';
import { pasteProfiles } from './view.ts';

/** Fetched when a file is asked for. */
const ToMvr = laterWith(planWords, 'coming')(() => import('./ToMvr.tsx'));

/** Characters past which some apps cut a link short (common practice, no source). */
const LONG = 8000;

interface Props {
	plan: Plan;
	/** The rig's id: a phone that has the rig merges the ticks into it. */
	id: string;
	before: Plan | null;
	/** As the device has them where they are not given. */
	ticks?: RigTicks;
	onClose: () => void;
}

/** The plan, with what was ticked off of it, as a link and as a file. */
export default function Send({ plan, id, before, ticks, onClose }: Props): JSX.Element {
	const [link, set] = useState('');
	const [said, say] = useState('');
	const [asMvr, openMvr] = useState(false);
	const [beside] = useState(() => ({
		id,
		ticks: ticks ?? ticksKeeper(DEVICE, id, Date.now).look(),
		...(before ? { before } : {}),
	}));
	useEffect(() => {
		void planLink(plan, Date.now(), beside).then((fragment) =>
			set(`${location.origin}${location.pathname}${fragment}`),
		);
	}, [plan]);
	return (
		<Dialog open onClose={onClose} title={planWords.share} closeWords={planWords.close}>
			<p>{planWords.shareWords}</p>
			<Field label={planWords.link} value={link} readOnly onFocus={(event) => event.currentTarget.select()} />
			{link.length > LONG && <p>{planWords.long(link.length)}</p>}
			<div class="rig-ways">
				<Button
					look="main"
					disabled={link === ''}
					onClick={() =>
						navigator.clipboard.writeText(link).then(
							() => say(planWords.copied),
							() => say(planWords.copyFailed),
						)
					}
				>
					{planWords.copyLink}
				</Button>
				<Button onClick={() => saveText(planWords.fileName, planText(plan, Date.now(), beside))}>
					{planWords.save}
				</Button>
				{plan.rows.length > 0 && (
					<>
						<Button
							onClick={() =>
								saveText(
									planWords.csvName,
									patchTable(plan, pasteWords.fields, tableWords, pasteProfiles(plan)),
									'text/csv',
								)
							}
						>
							{planWords.saveCsv}
						</Button>
						<Button disabled={asMvr} onClick={() => openMvr(true)}>
							{planWords.saveMvr}
						</Button>
					</>
				)}
			</div>
			{asMvr && <ToMvr plan={plan} />}
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
		</Dialog>
	);
}
