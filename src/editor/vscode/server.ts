/** The language server as the extension ships it: the same as `wmark editor`, in one file. */
import {serve} from '../server.js';

/** Put in by the bundler. */
declare const WMARK_VERSION: string;

serve(process.stdin, process.stdout, WMARK_VERSION);
