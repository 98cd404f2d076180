package batch

import (
	"context"
	"encoding/json"
	"errors"
	"strings"

	"lineworthy/check"
	"lineworthy/check/decide"
	"lineworthy/check/sheet"
	"lineworthy/rules"
)

// Sheets makes judges of lines that come as sheets. The text of an item is a sheet, or a JSON string that holds one, or
// that names the file of one.
func Sheets(c *check.Engine, e *decide.Engine, index []rules.Rule) func() Judge {
	severity := severities(index)
	return func() Judge {
		return func(ctx context.Context, i Item) Answer {
			line, err := parsed(i)
			if err != nil {
				return Answer{Err: err}
			}
			f, err := c.Facts(line)
			if err != nil {
				return Answer{Err: err}
			}
			x, err := e.Brief(ctx, f)
			if err != nil {
				return Answer{Err: err}
			}
			return Answer{Word: x.Word, Text: appendBrief(nil, i.Name, f.Line.ID, x, severity)}
		}
	}
}

func parsed(i Item) (*sheet.Line, error) {
	if len(i.Text) == 0 || i.Text[0] != '"' {
		return sheet.Parse(i.Name, i.Text)
	}
	var text string
	if err := json.Unmarshal(i.Text, &text); err != nil {
		return nil, errors.New("want a sheet as a JSON string, or the name of its file: " + err.Error())
	}
	if strings.Contains(text, "\n") {
		return sheet.Parse(i.Name, []byte(text))
	}
	return sheet.Read(text)
}
