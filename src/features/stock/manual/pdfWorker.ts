// The library's own worker, in a file of its own: it answers whoever started it by itself.
import 'pdfjs-dist/legacy/build/pdf.worker.mjs';
