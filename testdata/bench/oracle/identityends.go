package oracle

// likenesses are the ways in which labels are mistaken for one another, in words.
var likenesses = map[string]string{
	"last-digit":           "they differ in the last digit only",
	"look-alike-character": "they differ in characters that look alike",
	"one-character":        "they differ in one character only",
	"same":                 "the two are the same",
	"transposed":           "two characters have changed places",
}

// labelsTooAlike: only a key, or a coupling that is known not to take the hose, makes up for it.
func labelsTooAlike(l *line) {
	for _, x := range l.Labels {
		if !x.Keyed && x.Coupling != "different" {
			l.find(x.ID, word("a", x.A), word("b", x.B), word("label_a", x.LabelA), word("label_b", x.LabelB),
				word("likeness", likenesses[x.Likeness]))
		}
	}
}
