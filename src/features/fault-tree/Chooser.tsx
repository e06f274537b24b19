import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { casefileWords } from '#words/fault-tree/index.ts';
import { Button } from '../../ui/index.ts';
import type { NamedView } from './view.ts';

interface Props {
	rigs: readonly NamedView[];
	choice: { readonly rig: string; readonly fixture: string; readonly complaint: string };
	fixtures: readonly NamedView[];
	/** Null while they are not known. */
	complaints: readonly NamedView[] | null;
	busy: boolean;
	/** A tree stands under it: what comes next is to print that one. */
	made: boolean;
	onRig: (rig: string) => void;
	onFixture: (fixture: string) => void;
	onComplaint: (complaint: string) => void;
	onWork: () => void;
}

/** Rig, fixture, complaint, and the button that has the tree worked out. */
export function Chooser(props: Props): JSX.Element {
	const { rigs, choice, fixtures, complaints, busy, made, onRig, onFixture, onComplaint, onWork } = props;
	return (
		<form
			class="casefile-choose"
			onSubmit={(event) => {
				event.preventDefault();
				onWork();
			}}
		>
			<Choose label={casefileWords.rig} name="rig" from={rigs} value={choice.rig} onChoose={onRig} />
			<Choose
				label={casefileWords.fixture}
				name="fixture"
				from={fixtures}
				value={choice.fixture}
				onChoose={onFixture}
			/>
			<Choose
				label={casefileWords.complaint}
				name="complaint"
				from={complaints ?? []}
				value={choice.complaint}
				onChoose={onComplaint}
			/>
			<Button look={made ? 'plain' : 'main'} type="submit" disabled={busy || choice.complaint === ''}>
				{casefileWords.work}
			</Button>
		</form>
	);
}

interface ChooseProps {
	label: string;
	name: string;
	from: readonly NamedView[];
	value: string;
	onChoose: (id: string) => void;
}

function Choose({ label, name, from, value, onChoose }: ChooseProps): JSX.Element {
	const id = useId();
	return (
		<p class="casefile-field">
			<label for={id}>{label}</label>
			<select
				id={id}
				name={name}
				value={value}
				disabled={from.length === 0}
				onChange={({ currentTarget }) => onChoose(currentTarget.value)}
			>
				{value === '' && <option value="">{casefileWords.choose}</option>}
				{from.map((each) => (
					<option key={each.id} value={each.id} selected={each.id === value}>
						{each.name}
					</option>
				))}
			</select>
		</p>
	);
}
