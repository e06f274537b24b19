import { FEATURES } from './routes.ts';
import { type Port, serve } from './serve.ts';

serve(self as unknown as Port, FEATURES);
