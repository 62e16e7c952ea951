// Adds what a hand wants to the heaps screen.
