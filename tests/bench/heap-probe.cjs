// Loaded into the server beside the product: on SIGUSR2 it collects and says on descriptor 3 how much heap is in use.
const { writeSync } = require('node:fs');

process.on('SIGUSR2', () => {
  for (let pass = 0; pass < 3; pass++) globalThis.gc();
  writeSync(3, `${process.memoryUsage().heapUsed}\n`);
});
