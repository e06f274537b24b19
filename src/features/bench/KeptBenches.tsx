import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { asideWords as words } from '#words/bench/index.ts';
import { locale } from '#words/locale/index.ts';
import { dropText, saveText, tellKept } from '../../storage/index.ts';
import { Button, Dialog, Notice } from '../../ui/index.ts';
import { type Aside, asideList, asideText } from '../rig/index.ts';
import { OpenFile } from './OpenFile.tsx';
import type { DeviceStore, OpenOther } from './opened.ts';
import { openAside } from './reopening.ts';

interface Props {
	storage: DeviceStore;
	openOther: OpenOther;
	onClose: () => void;
}

/** What a bench is called in a list. */
function nameOf({ about, isNewer }: Aside): string {
	if (isNewer) return words.newer;
	return about ? words.about(about.name, about.fixtures, about.done) : words.unreadable;
}

/** The benches that gave up their place: each can be brought back, saved to a file, or deleted. */
export default function KeptBenches({ storage, openOther, onClose }: Props): JSX.Element {
	const [list, set] = useState(() => asideList(storage));
	const [wrong, tell] = useState<string | null>(null);
	const [sure, ask] = useState<string | null>(null);
	const bringBack = async (id: string) => {
		const trouble = await openOther((ways) => openAside(id, ways));
		tell(trouble);
		if (trouble === null) onClose();
	};
	const remove = (id: string) => {
		dropText(storage, id);
		tellKept();
		set(asideList(storage));
	};
	return (
		<Dialog open onClose={onClose} title={words.title} closeWords={words.close}>
			<p>{list.length === 0 ? words.none : words.words}</p>
			{wrong !== null && (
				<Notice kind="wrong">
					<p role="alert">{wrong}</p>
				</Notice>
			)}
			<OpenFile openOther={openOther} />
			<ul class="kept-benches">
				{list.map((each) => {
					const name = nameOf(each);
					return (
						<li key={each.id}>
							<p>
								<strong>{name}</strong>
								<br />
								{each.isTheirs && `${words.theirs} `}
								{words.why[each.why]} {each.at !== null && words.at(locale.date(each.at))}
							</p>
							<div class="bench-ways">
								<Button aria-label={words.backOne(name)} onClick={() => bringBack(each.id)}>
									{words.back}
								</Button>
								<Button
									aria-label={words.saveOne(name)}
									onClick={() => saveText(words.fileName, asideText(storage, each.id) ?? '')}
								>
									{words.save}
								</Button>
								<Button
									look="quiet"
									aria-label={sure === each.id ? undefined : words.removeOne(name)}
									onClick={() => (sure === each.id ? remove(each.id) : ask(each.id))}
								>
									{sure === each.id ? words.removeSure : words.remove}
								</Button>
							</div>
						</li>
					);
				})}
			</ul>
		</Dialog>
	);
}
