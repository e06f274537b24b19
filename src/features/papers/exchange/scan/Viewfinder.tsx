import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { paperWords, scanWords } from '#words/papers/index.ts';
import { isInputError } from '../../../../../shared/error/index.ts';
import { Live } from '../../../../ui/index.ts';
import { errorTextLater } from '../../../../wording/index.ts';
import { frameReader } from '../readQr.ts';
import { cameraTrouble, closeCamera, openCamera } from './openCamera.ts';

/** Milliseconds between two looks, so that the page stays quick on a phone. */
const PAUSE = 120;

interface Props {
	/** What a code holds: once for each that comes before the camera. Nothing is looked at until it has been dealt with. */
	onText: (text: string) => Promise<unknown>;
	/** The camera is off; with what went wrong, or '' where the page was only left. */
	onOff: (trouble: string) => void;
}

/** What the camera sees, each QR code in it read. It is on for as long as this is drawn and the page is looked at. */
export default function Viewfinder({ onText, onOff }: Props): JSX.Element {
	const video = useRef<HTMLVideoElement>(null);
	const [isOn, turnOn] = useState(false);
	const told = useRef({ onText, onOff });
	told.current = { onText, onOff };
	useEffect(() => {
		const reader = frameReader();
		let stream: MediaStream | null = null;
		let isOver = false;
		let last = '';
		let timer: ReturnType<typeof setTimeout> | undefined;
		const end = () => {
			isOver = true;
			clearTimeout(timer);
			reader.close();
			closeCamera(stream);
		};
		const fail = async (error: unknown) => {
			if (isOver) return;
			end();
			told.current.onOff(isInputError(error) ? await errorTextLater(error) : paperWords.failed);
		};
		const leave = () => {
			if (document.visibilityState !== 'hidden' || isOver) return;
			end();
			told.current.onOff('');
		};
		const look = async (): Promise<void> => {
			const text = video.current && (await reader.read(video.current));
			if (isOver) return;
			// the same code is still before the camera: it was dealt with
			if (text && text !== last) {
				last = text;
				await told.current.onText(text);
			}
			if (!isOver) timer = setTimeout(() => look().catch(fail), PAUSE);
		};
		const begin = async (): Promise<void> => {
			stream = await openCamera(navigator.mediaDevices, isSecureContext);
			if (isOver || !video.current) return closeCamera(stream);
			// unplugged, or taken back in the browser's settings
			for (const track of stream.getTracks()) track.onended = () => fail(cameraTrouble('stopped'));
			video.current.srcObject = stream;
			await video.current.play();
			turnOn(true);
			await look();
		};
		begin().catch(fail);
		document.addEventListener('visibilitychange', leave);
		return () => {
			end();
			document.removeEventListener('visibilitychange', leave);
		};
	}, []);
	const says = isOn ? scanWords.hold : scanWords.asking;
	return (
		<div class="scan-view" data-on={isOn}>
			<video ref={video} muted playsInline aria-label={scanWords.view} />
			<p aria-hidden="true">{says}</p>
			<Live text={says} />
		</div>
	);
}
