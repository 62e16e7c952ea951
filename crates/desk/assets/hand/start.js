// The scripts of this screen, once it is there.

const hands = { heaps, table, key, finds, measure };
const signal = new AbortController().signal;
hand(host, signal);
hands[document.body.dataset.hand]?.(host, signal);
