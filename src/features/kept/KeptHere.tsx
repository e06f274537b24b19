import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { locale } from '#words/locale/index.ts';
import { keptWords as words } from '#words/storage/index.ts';
import { DEVICE, followKept, isReadable, mayHoldRecords, saveText, tellKept } from '../../storage/index.ts';
import { Button, Live, Notice, Title } from '../../ui/index.ts';
import { asideLines, bytesOf, forget, type KeptLine, keptLines, textOf } from './list.ts';
import type { RecordLines } from './records.ts';

/** One thing in a list, and what can be done with it. */
interface KeptHereLine {
	readonly key: string;
	readonly name: string;
	readonly says: string;
	readonly bytes: number;
	/** The file's name but for what all have. */
	readonly file: string;
	readonly text: () => string;
	/** Returns false where the browser refuses. */
	readonly remove: () => boolean | Promise<boolean>;
}

const nameOf = ({ id }: KeptLine): string => (id === 'other' ? words.other : words.of[id]);

const kept = (): KeptHereLine[] =>
	keptLines(DEVICE).map((line) => ({
		key: line.id,
		name: nameOf(line),
		says: line.keys.length > 1 ? words.many(line.keys.length) : '',
		bytes: line.bytes,
		file: line.id,
		text: () => textOf(DEVICE, line.keys),
		remove: () => forget(DEVICE, line.keys),
	}));

const aside = (): KeptHereLine[] =>
	asideLines(DEVICE).map(({ key, of, why, at, bytes, text }) => ({
		key,
		name: words.ofAside[of],
		says: [words.why[why], ...(at === null ? [] : [words.at(locale.date(at))])].join(' '),
		bytes,
		file: `${of}-set-aside`,
		text: () => text,
		remove: () => forget(DEVICE, [key]),
	}));

/** Fetched where there may be some: a database is more than the rest of the page. */
const records = () => import('./records.ts');

const gone = (act: Promise<void>): Promise<boolean> =>
	act.then(
		() => true,
		() => false,
	);

const ofRecords = ({ papers, results, text }: RecordLines): KeptHereLine[] =>
	papers + results === 0
		? []
		: [
				{
					key: 'records',
					name: words.records,
					says: words.recordsOf(papers, results),
					bytes: bytesOf(text),
					file: 'papers',
					text: () => text,
					remove: () => gone(records().then(({ forgetRecords }) => forgetRecords())),
				},
			];

const ofRecordAsides = ({ asides }: RecordLines): KeptHereLine[] =>
	asides.map((each) => ({
		key: `record ${each.from}`,
		name: words.recordAside(each.from),
		says: each.sentence,
		bytes: bytesOf(JSON.stringify(each.found)),
		file: 'record-set-aside',
		text: () => JSON.stringify(each.found),
		remove: () => gone(records().then(({ withRecords }) => withRecords((held) => held.dropAside(each)))),
	}));

/** All that is kept on this device, and all that was set aside: each with its size, saved to a file or deleted. */
export function KeptHere(): JSX.Element {
	const [turn, again] = useState(0);
	const [held, setHeld] = useState<RecordLines | null>(null);
	const [isUnread, setUnread] = useState(false);
	const [said, say] = useState('');
	const top = useRef<HTMLDivElement>(null);
	useEffect(() => followKept(() => again((n) => n + 1)), []);
	useEffect(() => {
		const look = async () => ((await mayHoldRecords()) ? (await records()).recordLines() : null);
		look().then(
			(found) => {
				setHeld(found);
				setUnread(false);
			},
			() => setUnread(true),
		);
	}, [turn]);
	const remove = async (line: KeptHereLine) => {
		const done = await line.remove();
		say(done ? words.removed(line.name) : words.notRemoved);
		tellKept();
		// the button that was pressed is gone
		top.current?.focus();
	};
	if (!isReadable(DEVICE)) return <Notice>{words.refused}</Notice>;
	return (
		<div class="kept-here" ref={top} tabIndex={-1} data-turn={turn}>
			<Lines
				id="in-use"
				title={words.kept}
				lead={words.keptWords}
				none={words.none}
				lines={[...kept(), ...(held ? ofRecords(held) : [])]}
				onRemove={remove}
			/>
			<Lines
				id="set-aside"
				title={words.aside}
				lead={words.asideWords}
				none={words.asideNone}
				lines={[...aside(), ...(held ? ofRecordAsides(held) : [])]}
				onRemove={remove}
			/>
			{isUnread && <Notice kind="wrong">{words.recordsGone}</Notice>}
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
		</div>
	);
}

interface LinesProps {
	id: string;
	title: string;
	lead: string;
	none: string;
	lines: readonly KeptHereLine[];
	onRemove: (line: KeptHereLine) => void;
}

function Lines({ id, title, lead, none, lines, onRemove }: LinesProps): JSX.Element {
	const [sure, ask] = useState<string | null>(null);
	return (
		<section class="kept-lines" aria-labelledby={id}>
			<Title level={2} id={id}>
				{title}
			</Title>
			<p>{lines.length === 0 ? none : lead}</p>
			<ul>
				{lines.map((line) => (
					<li key={line.key} data-kept={line.key}>
						<p>
							<strong>{line.name}</strong> <span class="value">{words.size(line.bytes)}</span>
							{line.says !== '' && (
								<>
									<br />
									{line.says}
								</>
							)}
						</p>
						<div class="keeping-ways">
							<Button
								aria-label={words.saveOne(line.name)}
								onClick={() => saveText(words.fileName(line.file), line.text())}
							>
								{words.save}
							</Button>
							<Button
								look="quiet"
								aria-label={sure === line.key ? undefined : words.removeOne(line.name)}
								onClick={() => (sure === line.key ? onRemove(line) : ask(line.key))}
							>
								{sure === line.key ? words.removeSure : words.remove}
							</Button>
						</div>
					</li>
				))}
			</ul>
		</section>
	);
}
