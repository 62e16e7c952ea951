### Messages: table.
