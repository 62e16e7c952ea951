//! Tables, handwritten keys and open formats in and out.
