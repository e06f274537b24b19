import { type ComponentType, createContext } from 'preact';
import type { Profile } from '../../../shared/profile/index.ts';

/** What draws the panel of a profile, to be pressed. */
export type LivePanelOf = ComponentType<{ profile: Profile }>;

/** Handed in by the page; null where none is drawn. */
export const PanelContext = createContext<LivePanelOf | null>(null);
