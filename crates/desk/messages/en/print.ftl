### Messages: print.
