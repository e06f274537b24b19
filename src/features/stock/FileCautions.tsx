import type { JSX } from 'preact';
import { cautions, siteFirst } from '#words/cautions/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { CautionLine } from '../../ui/index.ts';
import { cautionsOf, type Notes } from './notes.ts';

interface Props {
	entry: Notes;
	profile: Profile;
}

/** What can hurt with the fixture of an entry. A file of its own: the editor of a chart needs it without the words for files. */
export function FileCautions({ entry, profile }: Props): JSX.Element {
	return (
		<>
			{cautionsOf(profile, entry).map((id) => (
				<CautionLine key={id} caution={cautions[id]} siteFirst={siteFirst} />
			))}
		</>
	);
}
