import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { scanWords } from '#words/papers/index.ts';
import { Button, Notice } from '../../../../ui/index.ts';
import { later } from '../../asking.ts';

const Viewfinder = later(() => import('./Viewfinder.tsx'));

/**
 * A button that turns the camera on to read QR codes, and off. What reads is fetched once it is asked for.
 * @param onText told what each code holds; the next is looked for once it has been dealt with
 */
export function ScanQr({ onText }: { onText: (text: string) => Promise<unknown> }): JSX.Element {
	const [isOn, turn] = useState(false);
	const [trouble, tell] = useState('');
	return (
		<div class="scan">
			<Button
				onClick={() => {
					tell('');
					turn(!isOn);
				}}
			>
				{isOn ? scanWords.stop : scanWords.start}
			</Button>
			{isOn && (
				<Viewfinder
					onText={onText}
					onOff={(why) => {
						turn(false);
						tell(why);
					}}
				/>
			)}
			{/* in the page before its words are, or they are not read out */}
			<div role="alert">{trouble !== '' && <Notice kind="wrong">{trouble}</Notice>}</div>
		</div>
	);
}
