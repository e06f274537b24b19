import type { JSX } from 'preact';
import { panelEdit as words } from '#words/stock/index.ts';
import { KEYS_OF, type PanelEntry } from '../../../shared/stock/index.ts';
import { Button, Field } from '../../ui/index.ts';

type Keys = PanelEntry['keys'];

interface Props {
	panel: PanelEntry;
	onKeys: (keys: Keys) => void;
}

/** The keys of a panel in their order: what each does, and what is printed on it. */
export function PanelKeys({ panel: { way, keys }, onKeys }: Props): JSX.Element {
	const jobs = KEYS_OF[way];
	const free = jobs.filter((job) => !keys.some(({ key }) => key === job));
	const put = (at: number, part: Partial<Keys[number]>) =>
		onKeys(keys.map((each, i) => (i === at ? { ...each, ...part } : each)));
	return (
		<fieldset class="stock-label">
			<legend>{words.keys}</legend>
			<p class="field-hint">{words.keysHint}</p>
			<ol class="stock-keys">
				{keys.map(({ key, name }, i) => (
					<li key={i}>
						<div class="field">
							<label for={`panel-key-${i}`}>{words.key(i + 1)}</label>
							<select
								id={`panel-key-${i}`}
								value={key}
								onChange={({ currentTarget }) => {
									const next = jobs.find((job) => job === currentTarget.value) ?? key;
									// two keys that would have one job change theirs
									onKeys(
										keys.map((each, n) =>
											n === i ? { ...each, key: next } : each.key === next ? { ...each, key } : each,
										),
									);
								}}
							>
								{jobs.map((job) => (
									<option key={job} value={job}>
										{words.jobs[job]}
									</option>
								))}
							</select>
						</div>
						<Field
							label={words.keyName(i + 1)}
							value={name}
							maxLength={12}
							size={12}
							onInput={(event) => put(i, { name: event.currentTarget.value })}
						/>
						{keys.length > 1 && (
							<Button
								look="quiet"
								aria-label={words.removeKey(i + 1)}
								onClick={() => onKeys(keys.filter((_, n) => n !== i))}
							>
								{words.remove}
							</Button>
						)}
					</li>
				))}
			</ol>
			{free[0] && (
				<Button look="quiet" onClick={() => onKeys([...keys, { key: free[0] as Keys[number]['key'], name: '' }])}>
					{words.addKey}
				</Button>
			)}
		</fieldset>
	);
}
