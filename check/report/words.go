package report

import (
	"slices"
	"strconv"
	"strings"
)

// The severities of a finding, worst first, as the rules write them.
const (
	stop      = "stop"
	condition = "condition"
	note      = "note"
)

var severities = []string{stop, condition, note}

// verdictWords is the order in which a summary counts: what needs a person first.
var verdictWords = []Word{Unfit, Unproven, Conditional, Fit}

func wordRank(w Word) int { return slices.Index(verdictWords, w) }

func wordList() string {
	var words []string
	for _, w := range verdictWords {
		words = append(words, string(w))
	}
	return strings.Join(words, ", ")
}

func capitals(w Word) string { return strings.ToUpper(string(w)) }

// meaning says what the person at the line does with the word.
var meaning = map[Word]string{
	Unfit:       "Do not use this line.",
	Unproven:    "Do not use this line yet: it is not shown to be safe.",
	Conditional: "Use this line only after every condition is met and every value is confirmed.",
	Fit:         "No fault was found in what was judged.",
}

// order says what a severity asks of the reader.
var order = map[string]string{
	stop:      "Put each right before the line is used.",
	condition: "Meet each before the line is used.",
	note:      "Good to know; no bar to using the line.",
}

// standings explains how a value is known, in the words of someone who has to look it up.
var standings = []struct{ word, means string }{
	{"published", "the document was read"},
	{"restated", "read in somebody's summary of the document"},
	{"recalled", "from memory of the document"},
	{"stated", "written on the sheet, no document named"},
	{"practice", "common practice, no document"},
	{"computed", "worked out"},
	{"site", "from the papers of this site"},
}

// number is a count with its thing, e.g. "1 check", "3 checks".
func number(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return strconv.Itoa(n) + " " + thing + "s"
}
