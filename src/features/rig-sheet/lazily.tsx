import { planWords } from '#words/plan/index.ts';
import { laterWith } from '../../ui/index.ts';

const later = laterWith(planWords, 'coming');

/** Parts of the page that are fetched when they are first opened; what is sent and printed from those too is in `goingOut.tsx`. */
export const NewList = later(() => import('./NewList.tsx'));
export const FromMvr = later(() => import('./FromMvr.tsx'));
export const Paste = later(() => import('./Paste.tsx'));
export const OwnChoices = later(() => import('./OwnChoices.tsx'), true);
export const TickOff = later(() => import('./TickOff.tsx'));
export const LightSheet = later(() => import('./LightSheet.tsx'));
export const DeskCheck = later(() => import('./DeskCheck.tsx'));
export const Changes = later(() => import('./Changes.tsx'));
/** Practice on a copy of a rig. */
export const Practise = later(() => import('./Practise.tsx'));
/** How far the rig planned last has come, for the home page: the page of the rig does not show it. */
export const RigTonight = later(() => import('./Tonight.tsx'));
