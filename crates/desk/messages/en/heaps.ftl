### Messages: heaps.
