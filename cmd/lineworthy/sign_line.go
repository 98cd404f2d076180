package main

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"path/filepath"

	"lineworthy/check"
	"lineworthy/check/approval"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// readSheet reads the file once, so that what is judged and what is signed are the same bytes.
func readSheet(path string) (*sheet.Line, string, error) {
	data, err := os.ReadFile(path)
	if err != nil {
		_, err := sheet.Read(path)
		return nil, "", err
	}
	sum := sha256.Sum256(data)
	line, err := sheet.Parse(path, data)
	return line, hex.EncodeToString(sum[:]), err
}

// judgeOn judges the line for the day, whatever day its sheet states.
func judgeOn(ctx context.Context, e *check.Engine, line *sheet.Line, day units.Date) (*report.Verdict, error) {
	dated := *line
	dated.AsOf = sheet.Of[units.Date]{V: day, Set: true, Pos: line.AsOf.Pos, Text: day.String()}
	return e.Check(ctx, &dated)
}

// statement makes what is to be signed, or says what stands against it.
func (n *signing) statement(ctx context.Context, a approval.Approval, accepted []approval.Accepted, on units.Date) (*approval.Statement, error) {
	v, err := judgeOn(ctx, n.engine, n.line, on)
	if err != nil {
		return nil, err
	}
	a.Conditions, err = approval.Match(approval.Conditions(v), accepted)
	if err != nil {
		return nil, usage(fmt.Errorf("%w\n%s", err, known(v)))
	}
	made, err := approval.New(filepath.Base(n.line.File), n.sum, v, a)
	if err != nil {
		return nil, usage(err)
	}
	return made, n.mayApprove(v, a)
}
