import { FEATURES } from './routes.ts';
import { type EnginePort, serve } from './serve.ts';

serve(self as unknown as EnginePort, FEATURES);
