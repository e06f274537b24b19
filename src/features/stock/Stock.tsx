import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { locale } from '#words/locale/index.ts';
import { cardWords, fileWords, stockKeeping, stockPage, stockWords as words } from '#words/stock/index.ts';
import type { StockEntry } from '../../../shared/stock/index.ts';
import { DEVICE, followKept, MOST_READ, type OnShelf, saveText, Trouble } from '../../storage/index.ts';
import { Button, FileButton, Live, laterWith, Notice } from '../../ui/index.ts';
import { errorTextLater } from '../../wording/index.ts';
import { type AddOutcome, addFile, addLink, asideText, changeStock, holdsStock, openStock } from './keep.ts';
import { nameOf } from './own.ts';
import { PutOn } from './PutOn.tsx';
import { type LivePanelOf, PanelContext } from './panelContext.ts';
import { inOrder, MOST_STOCK, type StockList, stockText } from './stock.ts';

const later = laterWith(stockPage, 'coming');
const Editor = later(() => import('./Editor.tsx'));
const FileEditor = later(() => import('./FileEditor.tsx'));
const FileRead = later(() => import('./FileRead.tsx'));
const Card = later(() => import('./Card.tsx'));

const storage = DEVICE;

interface Props {
	/** Draws a panel to be pressed: the bench's own, which offers these fixtures and so is handed in. */
	panel: LivePanelOf;
}

/** The crew's own fixtures, and one of them in the editor. */
export function Stock({ panel }: Props): JSX.Element {
	const [found, set] = useState<OnShelf<StockList> | null>(null);
	const [open, edit] = useState<StockEntry | null>(null);
	/** A fixture file that was chosen, before any of it is kept. */
	const [file, read] = useState<Uint8Array | null>(null);
	const [card, show] = useState<StockEntry | null>(null);
	const [said, say] = useState('');
	const [wrong, tell] = useState<string | null>(null);
	const [gone, drop] = useState<StockEntry | null>(null);
	const heading = useRef<HTMLHeadingElement>(null);
	const look = () => openStock(storage).then(set);
	const came = (outcome: AddOutcome, what: (n: number) => string) => {
		if (outcome.is === 'added') {
			set(outcome.found);
			say(what(outcome.count));
			tell(null);
		} else void errorTextLater(outcome.because).then(tell);
	};
	useEffect(() => {
		const { hash } = location;
		if (holdsStock(hash)) {
			history.replaceState(null, '', location.pathname);
			look()
				.then(() => addLink(storage, hash))
				.then((outcome) => came(outcome, words.fromLink));
		} else look();
		return followKept(look);
	}, []);

	if (!found) return <p class="coming">{stockPage.loading}</p>;
	const backToList = () => {
		edit(null);
		read(null);
		show(null);
		look().then(() => heading.current?.focus());
	};
	if (open) {
		const at = { storage, onDone: backToList };
		return (
			<PanelContext.Provider value={panel}>
				{open.kind === 'chart' ? (
					<Editor key={open.id} entry={open} {...at} />
				) : (
					<FileEditor key={open.id} entry={open} {...at} />
				)}
			</PanelContext.Provider>
		);
	}
	if (card) return <Card entry={card} onDone={backToList} />;
	if (file)
		return (
			<FileRead
				bytes={file}
				full={found.kept.size < MOST_STOCK ? null : fileWords.full(MOST_STOCK)}
				onKeep={async (entry) => {
					set(await changeStock(storage, (stock) => new Map(stock).set(entry.id, entry)));
					say(fileWords.kept(nameOf(entry)));
					backToList();
				}}
				onLeave={backToList}
			/>
		);

	const entries = inOrder(found.kept);
	const add = async () => {
		const { newEntry } = await import('./maker.ts');
		edit(newEntry(words.nameNew(entries.length + 1), Date.now()));
	};
	const remove = async (entry: StockEntry) => {
		set(await changeStock(storage, (stock) => new Map([...stock].filter(([id]) => id !== entry.id))));
		drop(entry);
		say(words.removed(nameOf(entry)));
	};
	const bringBack = async (entry: StockEntry) => {
		set(await changeStock(storage, (stock) => new Map(stock).set(entry.id, entry)));
		drop(null);
		say('');
	};
	return (
		<div class="stock">
			<Trouble words={stockKeeping} found={found} aside={() => asideText(storage)} onDone={look} />
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			<h2 ref={heading} tabIndex={-1}>
				{words.list}
			</h2>
			{entries.length === 0 && <p>{words.none}</p>}
			<ul class="stock-list">
				{entries.map((entry) => (
					<Row key={entry.id} entry={entry} onEdit={edit} onCard={show} onRemove={remove} onTrouble={tell} />
				))}
			</ul>
			<div class="stock-ways">
				{entries.length < MOST_STOCK ? (
					<Button look="main" onClick={add}>
						{words.add}
					</Button>
				) : (
					<p>{words.full(MOST_STOCK)}</p>
				)}
				{gone && <Button onClick={() => bringBack(gone)}>{words.bringBack}</Button>}
			</div>
			<p aria-hidden="true">{said}</p>
			<Live text={said} />
			<h2>{words.more}</h2>
			<div class="stock-ways">
				<Button disabled={entries.length === 0} onClick={() => saveText(words.fileName, stockText(found.kept))}>
					{words.save}
				</Button>
				<OpenFile
					onText={async (text) => came(await addFile(storage, text), words.opened)}
					onFixtureFile={(bytes) => {
						say('');
						tell(null);
						read(bytes);
					}}
					onUnread={tell}
				/>
			</div>
			<p class="field-hint">{words.openHint}</p>
		</div>
	);
}

interface RowProps {
	entry: StockEntry;
	onEdit: (entry: StockEntry) => void;
	onCard: (entry: StockEntry) => void;
	onRemove: (entry: StockEntry) => void;
	onTrouble: (sentence: string | null) => void;
}

function Row({ entry, onEdit, onCard, onRemove, onTrouble }: RowProps): JSX.Element {
	const name = nameOf(entry);
	return (
		<li>
			<p class="stock-name">
				<strong>{name}</strong>
				<span>
					{entry.kind === 'file' && `${words.fromFile} `}
					{words.changed(locale.date(entry.changed))}
				</span>
			</p>
			<div class="stock-ways">
				<Button aria-label={words.openOne(name)} onClick={() => onEdit(entry)}>
					{words.open}
				</Button>
				<PutOn entry={entry} look="plain" onTrouble={onTrouble} />
				<Button aria-label={cardWords.makeOne(name)} onClick={() => onCard(entry)}>
					{cardWords.make}
				</Button>
				<Button look="quiet" aria-label={words.removeOne(name)} onClick={() => onRemove(entry)}>
					{words.remove}
				</Button>
			</div>
		</li>
	);
}

interface OpenFileProps {
	/** Of a file that was saved here. */
	onText: (text: string) => Promise<void>;
	onFixtureFile: (bytes: Uint8Array) => void;
	onUnread: (sentence: string) => void;
}

/** An open fixture file is a zip archive (DIN SPEC 15800), and every such begins with these letters. */
const ARCHIVE = 'PK';

function OpenFile({ onText, onFixtureFile, onUnread }: OpenFileProps): JSX.Element {
	const take = async (chosen: File) => {
		if (/\.gdtf$/i.test(chosen.name) || (await chosen.slice(0, ARCHIVE.length).text()) === ARCHIVE)
			onFixtureFile(new Uint8Array(await chosen.slice(0, MOST_READ.fixtureFile).arrayBuffer()));
		// larger than anything of ours: as if it held nothing, so that it is said to hold none of ours
		else await onText(chosen.size > MOST_READ.saved ? '' : await chosen.text());
	};
	return (
		<FileButton onFile={take} onUnread={onUnread}>
			{words.openFile}
		</FileButton>
	);
}
