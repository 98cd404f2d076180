package report

import (
	"encoding/xml"
	"slices"
)

type junitSuites struct {
	XMLName  xml.Name     `xml:"testsuites"`
	Tests    int          `xml:"tests,attr"`
	Failures int          `xml:"failures,attr"`
	Errors   int          `xml:"errors,attr"`
	Skipped  int          `xml:"skipped,attr"`
	Suites   []junitSuite `xml:"testsuite"`
}

type junitSuite struct {
	Name       string          `xml:"name,attr"`
	Tests      int             `xml:"tests,attr"`
	Failures   int             `xml:"failures,attr"`
	Errors     int             `xml:"errors,attr"`
	Skipped    int             `xml:"skipped,attr"`
	Timestamp  string          `xml:"timestamp,attr"` // the day the line is judged for
	Properties []junitProperty `xml:"properties>property"`
	Cases      []junitCase     `xml:"testcase"`
	Out        string          `xml:"system-out,omitempty"`
}

type junitProperty struct {
	Name  string `xml:"name,attr"`
	Value string `xml:"value,attr"`
}

type junitCase struct {
	Class   string        `xml:"classname,attr"`
	Name    string        `xml:"name,attr"`
	Skipped *junitSkipped `xml:"skipped"`
	Error   *junitFault   `xml:"error"`
	Failure *junitFault   `xml:"failure"`
	Out     string        `xml:"system-out,omitempty"`
}

type junitSkipped struct {
	Message string `xml:"message,attr"`
}

type junitFault struct {
	Message string `xml:"message,attr"`
	Type    string `xml:"type,attr"`
	Text    string `xml:",chardata"`
}

// add keeps the counts with the cases, so that the two cannot part ways.
func (s *junitSuite) add(c junitCase) {
	s.Cases = append(s.Cases, c)
	s.Tests++
	switch {
	case c.Failure != nil:
		s.Failures++
	case c.Error != nil:
		s.Errors++
	case c.Skipped != nil:
		s.Skipped++
	}
}

func (all *junitSuites) add(s junitSuite) {
	all.Suites = append(all.Suites, s)
	all.Tests += s.Tests
	all.Failures += s.Failures
	all.Errors += s.Errors
	all.Skipped += s.Skipped
}

// rank is how bad a severity is, the worst first.
func rank(severity string) int { return slices.Index(severities, severity) }
