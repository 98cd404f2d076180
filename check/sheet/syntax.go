package sheet

import (
	"bytes"
	"errors"
	"io"
	"regexp"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"
)

const emptyHint = "start from the commented template"

// document gives the mapping node of the one document in the file.
func document(file string, data []byte) (*yaml.Node, *Problem) {
	decoder := yaml.NewDecoder(bytes.NewReader(data))
	var first, second yaml.Node
	err := decoder.Decode(&first)
	if errors.Is(err, io.EOF) {
		return nil, nothingWritten(file)
	}
	if err == nil {
		err = decoder.Decode(&second)
	}
	switch {
	case errors.Is(err, io.EOF) && isEmpty(first.Content[0]):
		return nil, nothingWritten(file)
	case errors.Is(err, io.EOF):
		return first.Content[0], nil
	case err != nil:
		return nil, syntaxProblem(file, data, err)
	}
	return nil, &Problem{File: file, Line: second.Line, Col: second.Column,
		Text: "a second document starts here", Hint: "write one sheet a file, without --- between parts of it"}
}

func nothingWritten(file string) *Problem {
	return &Problem{File: file, Line: 1, Col: 1, Text: "nothing is written in the file", Hint: emptyHint}
}

var yamlError = regexp.MustCompile(`^(?:yaml: )?(?:line (\d+): )?(.*)$`)

// syntaxProblem says in plain words why the YAML reader stopped, and where.
func syntaxProblem(file string, data []byte, err error) *Problem {
	parts := yamlError.FindStringSubmatch(shownError(err))
	reported, _ := strconv.Atoi(parts[1])
	line := brokenLine(data, max(reported, 1))
	text := lineOf(data, line)
	indent := text[:len(text)-len(strings.TrimLeft(text, " \t"))]
	p := &Problem{File: file, Line: line, Col: len(indent) + 1}
	if tab := strings.IndexByte(indent, '\t'); tab >= 0 {
		p.Col, p.Text, p.Hint = tab+1, "a tab is used to indent", "indent with spaces"
		return p
	}
	p.Text, p.Hint = plainWords(parts[2])
	return p
}

// syntaxWords turns what the YAML reader says into what the author can do.
var syntaxWords = []struct{ has, text, hint string }{
	{"mapping values are not allowed", "a colon that cannot stand here",
		"see that the line above has its colon, line up the keys of one block, and put text that holds a colon in quotes"},
	{"unknown anchor", "a value cannot start with *", "write the value out, or put it in quotes"},
	{"cannot start any token", "a value cannot start with this sign", "put the value in quotes, and indent with spaces"},
	{"expected ',' or", "a list or mapping in brackets is not closed, or a comma is missing", "check the brackets and commas"},
	{"did not find expected key", "the indent does not fit the lines above, or a quote or bracket is out of place",
		"line up the keys of one block with spaces"},
	{"did not find expected '-'", "the indent does not fit the list above", "line up the dashes of one list"},
	{"expected ':'", "a key without its colon", "write key: value"},
	{"unexpected end of stream", "a quote that is opened here is not closed", "close the quote"},
}

func plainWords(yamlText string) (text, hint string) {
	for _, words := range syntaxWords {
		if strings.Contains(yamlText, words.has) {
			return words.text, words.hint
		}
	}
	return "not readable as YAML: " + shown(yamlText), "check the indent, colons, quotes and brackets"
}

// searchedBytes bounds the work of brokenLine to a fraction of a second.
const searchedBytes = 4_000_000

// brokenLine is the first line after the longest run of whole lines that can be read. The YAML reader
// itself often names the start of the block instead, many lines above the slip.
func brokenLine(data []byte, reported int) int {
	line := bytes.Count(data, []byte("\n")) + 1
	for end, work := len(data), 0; end > 0; line-- {
		end = max(bytes.LastIndexByte(data[:end], '\n'), 0)
		if work += end; work > searchedBytes {
			return reported
		}
		if readable(data[:end]) {
			break
		}
	}
	return line
}

func readable(data []byte) bool {
	decoder := yaml.NewDecoder(bytes.NewReader(data))
	for {
		var node yaml.Node
		if err := decoder.Decode(&node); err != nil {
			return errors.Is(err, io.EOF)
		}
	}
}

func lineOf(data []byte, line int) string {
	lines := bytes.SplitN(data, []byte("\n"), line+1)
	return string(lines[min(line, len(lines))-1])
}
