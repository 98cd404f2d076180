package report

import (
	"slices"
	"strings"
)

// judgedCase is a failure by its worst finding; a note alone lets it pass and is told in its output.
func judgedCase(key judgement, fs []Finding) junitCase {
	c := junitCase{Class: key.rule, Name: key.subject}
	var text []string
	worst := note
	for _, s := range severities {
		for _, f := range fs {
			if f.Severity == s {
				text = append(text, findingText(f))
				worst = severities[min(rank(worst), rank(s))]
			}
		}
	}
	switch {
	case len(fs) == 0:
	case worst == note:
		c.Out = strings.Join(text, "\n")
	default:
		c.Failure = &junitFault{text[0], worst, strings.Join(text, "\n")}
	}
	return c
}

// gapCase is an error that tells what to find out.
func gapCase(v *Verdict, key judgement) junitCase {
	text := []string{}
	for _, u := range v.Unjudged {
		if u.Subject == key.subject && (slices.Contains(u.Rules, key.rule) || key.rule == unknownRule) {
			text = append(text, unknownText(u))
		}
	}
	message := "could not be judged"
	if len(text) > 0 {
		message = text[0]
	}
	return junitCase{Class: key.rule, Name: key.subject, Error: &junitFault{message, "not known", strings.Join(text, "\n")}}
}
