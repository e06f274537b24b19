import { InputError } from '../../../../../shared/error/index.ts';

/** Dots to ask for: a code of a whole paper is dense. A camera with fewer gives what it has. */
const WANTED = { width: { ideal: 1920 }, height: { ideal: 1080 } };

type CameraTrouble = 'insecure' | 'unable' | 'refused' | 'missing' | 'busy' | 'stopped';

/** What went wrong, by the name the browser gives it (W3C Media Capture and Streams, `getUserMedia`). */
const TROUBLES: Readonly<Record<string, CameraTrouble>> = {
	NotAllowedError: 'refused',
	SecurityError: 'refused',
	NotFoundError: 'missing',
	OverconstrainedError: 'missing',
	NotReadableError: 'busy',
	AbortError: 'busy',
};

/**
 * Asks for the camera on the back of the device; where it has none there, any. The person is asked by the browser.
 * @param devices the browser's own; not there on a page that is not secure
 * @throws InputError `camera.insecure`, `camera.unable`, `camera.refused`, `camera.missing`, `camera.busy`
 */
export async function openCamera(
	devices: Pick<MediaDevices, 'getUserMedia'> | undefined,
	isSecure: boolean,
): Promise<MediaStream> {
	if (!isSecure) throw cameraTrouble('insecure');
	if (!devices) throw cameraTrouble('unable');
	try {
		return await devices.getUserMedia({ audio: false, video: { facingMode: { ideal: 'environment' }, ...WANTED } });
	} catch (error) {
		throw cameraTrouble((error instanceof Error && TROUBLES[error.name]) || 'unable');
	}
}

export const cameraTrouble = (trouble: CameraTrouble): InputError => new InputError(`camera.${trouble}`, '', {});

/** Lets the camera go: its light goes out. */
export function closeCamera(stream: MediaStream | null): void {
	for (const track of stream?.getTracks() ?? []) track.stop();
}
