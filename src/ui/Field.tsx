import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

export type FieldProps = Omit<JSX.IntrinsicElements['input'], 'id' | 'label'> & {
	label: string;
	/** What to type, under the label. */
	hint?: string;
	/** What is wrong with what stands there, in a sentence that says what to do. */
	error?: string | undefined;
	/** After the box, such as "%". */
	unit?: string;
};

/** A labelled box to type in, with its hint and its error tied to it. */
export function Field({ label, hint, error, unit, ...input }: FieldProps): JSX.Element {
	const id = useId();
	const told = [hint === undefined ? '' : `${id}-hint`, error === undefined ? '' : `${id}-error`]
		.filter(Boolean)
		.join(' ');
	return (
		<div class="field">
			<label for={id}>{label}</label>
			{hint === undefined ? null : (
				<p class="field-hint" id={`${id}-hint`}>
					{hint}
				</p>
			)}
			<span class="field-box">
				<input
					type="text"
					{...input}
					id={id}
					aria-invalid={error !== undefined}
					{...(told === '' ? {} : { 'aria-describedby': told })}
				/>
				{unit === undefined ? null : <span class="field-unit">{unit}</span>}
			</span>
			{error === undefined ? null : (
				<p class="field-error" id={`${id}-error`}>
					{error}
				</p>
			)}
		</div>
	);
}
