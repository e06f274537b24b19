import type { JSX } from 'preact';
import { Fetched } from './Fetched.tsx';
import { isSetUnseen } from './go.ts';
import { type SetTaskProps, TaskGoes } from './TaskGoes.tsx';

const fetchUnseen = () => import('./SetTaskUnseen.tsx');

/** A task of somebody else's, such as a lesson's. One on panels that nobody has seen waits for what makes them. */
export default function SetTask(props: SetTaskProps): JSX.Element {
	return isSetUnseen(props.set) ? <Fetched load={fetchUnseen} props={props} /> : <TaskGoes {...props} />;
}
