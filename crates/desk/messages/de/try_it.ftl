### Messages: try_it.
