//! What can be written down about a kind, a character, a specimen, the scene and a key.

/// What can be written down about a kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum KindField {
    /// The name that pupils use; empty: not named yet.
    Name,
    /// The scientific name.
    ScientificName,
    /// Other names, with their languages: `de: Hasel; cy: collen`.
    OtherNames,
    /// Its name in the second language of the sheets.
    SecondName,
    /// How often it is met: a number, or often, sometimes, rarely.
    HowOften,
    /// What may hurt.
    Caution,
    /// A sentence by which a pupil confirms the name at the end.
    ConfirmBy,
    /// How sure the name is, and who says so.
    HowSure,
    /// Where it was found.
    Where,
    /// When it was found.
    When,
    /// Which single plant (or stone, or puddle) it came from.
    WhichPlant,
}

/// What can be written down about a character. All are read as the sheet `characters` is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum CharacterField {
    /// Its name.
    Name,
    /// How to ask about it, with `{}` for the states.
    Question,
    /// The same in the second language of the sheets.
    SecondQuestion,
    /// What its cells hold: words, counts or a measure; empty: as they look.
    Values,
    /// Its states, in their order.
    States,
    /// Its states in that language: `toothed = ząbkowany; smooth = gładki`.
    SecondStates,
    /// What it is measured in.
    Unit,
    /// How far a threshold stays from every range.
    Gap,
    /// The forms in the hand on which it can be seen.
    SeenOn,
    /// When it can be seen.
    Season,
    /// How hard it is to see.
    Difficulty,
    /// How often people read it right, in per cent.
    ReadRight,
    /// Whether answering means touching.
    ByTouch,
    /// What must hold before it is there at all.
    AppliesWhen,
    /// What one needs to see it.
    Instrument,
    /// Whether its states stand in an order.
    InOrder,
    /// The words that one must know.
    WordsToKnow,
    /// The two lengths of which it is the ratio.
    RatioOf,
}

/// What can be written down about a single specimen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum SpecimenField {
    /// Who measured it: what they measured is one voice beside others.
    Source,
    /// What it is called: its number, and the picture that it was found in.
    Called,
    /// Which single plant it is of.
    WhichPlant,
    /// Where it was found.
    Where,
    /// When it was found.
    When,
    /// Which part of the plant it is: sun, shade, sucker.
    Part,
}

/// What stands in the title of a key.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum AboutField {
    /// What it is called.
    Title,
    /// Where.
    Place,
    /// When in the year.
    Season,
    /// Which part is needed in the hand.
    Part,
    /// What everybody on the visit must know, whatever they find.
    Caution,
    /// What the adults see to before they set out, a line each.
    BeforeYouGo,
    /// How many children come along.
    Children,
    /// In how many groups they go.
    Groups,
    /// The second language of the sheets.
    SecondLanguage,
    /// Questions worded by hand in that language, a line each: `Is it hollow? = Czy jest pusty?`
    SecondQuestions,
}

/// What a key is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum WishField {
    /// Whose key it is: a group.
    Group,
    /// The form in the hand.
    Hand,
    /// The season.
    Season,
    /// Whether pupils may be sent to touch while a kind with a caution is possible: `allowed` or
    /// empty.
    Touch,
    /// Whether the rest of it is to be found by the machine: `yes` or empty.
    Finish,
    /// The token of the key that people have tried; empty: nobody has.
    Tried,
}
