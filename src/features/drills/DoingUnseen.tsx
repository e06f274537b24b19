import type { JSX } from 'preact';
import { unseen } from '../invented/index.ts';
import Doing, { type DrillToDo } from './Doing.tsx';

/** A drill on a fixture that nobody has seen. In a file of its own, with the words that it is made of. */
export default function DoingUnseen(props: DrillToDo): JSX.Element {
	return <Doing {...props} unseen={unseen} />;
}
