### Our finds.

caution = Take care!
finds-empty = What did you find? Type the names below, one a line, or drop in pictures. A find without a name goes by a letter until somebody knows it.
finds-not-named = not named yet
finds-add = Add finds
finds-names = Names, one a line
finds-pictures = Or pictures, one find each
finds-add-button = Add
finds-too-many = A collection holds at most { $count } kinds.
finds-too-many-remedy = Begin a second collection, for instance one a habitat.
picture-not-read = { $file } could not be read as a picture.
picture-too-large = { $file } has more pixels than are read here.
picture-remedy = Give a JPEG or PNG file of at most 40 million pixels. Where and when it was taken is not kept.
