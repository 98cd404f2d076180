package check

import (
	"context"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

func seated(t *testing.T, atOnce int) (*Engine, *sheet.Line) {
	e, err := New(context.Background(), Options{Version: "test", AtOnce: atOnce, Many: true})
	require.NoError(t, err)
	line, err := sheet.Read("../testdata/lines/toluene-yard/line.yaml")
	require.NoError(t, err)
	return e, line
}

// TestNoMoreAtOnce: whoever finds all seats taken waits, no longer than it is given, and then has no verdict.
func TestNoMoreAtOnce(t *testing.T) {
	e, line := seated(t, 2)
	leave, err := e.seat(context.Background())
	require.NoError(t, err)
	_, err = e.Check(context.Background(), line)
	require.NoError(t, err, "the second seat")
	other, err := e.seat(context.Background())
	require.NoError(t, err)
	for _, judge := range []func(context.Context, *sheet.Line) (*report.Verdict, error){
		e.Check, func(ctx context.Context, s *sheet.Line) (*report.Verdict, error) { return e.Summary(ctx, s) },
	} {
		ctx, stop := context.WithTimeout(context.Background(), 20*time.Millisecond)
		v, err := judge(ctx, line)
		stop()
		assert.ErrorIs(t, err, context.DeadlineExceeded)
		assert.Nil(t, v)
	}
	leave()
	other()
	_, err = e.Check(context.Background(), line)
	require.NoError(t, err, "seats are given back")
	ended, end := context.WithCancel(context.Background())
	end()
	_, err = e.Check(ended, line)
	assert.ErrorIs(t, err, context.Canceled)
}

// TestManyAskAtOnce: many callers of one engine, some of whom give up, get the verdict that one alone gets. Run with -race.
func TestManyAskAtOnce(t *testing.T) {
	e, line := seated(t, 2)
	want, err := e.Check(context.Background(), line)
	require.NoError(t, err)
	var group sync.WaitGroup
	for i := range 24 {
		group.Go(func() {
			ctx, stop := context.WithTimeout(context.Background(), time.Duration(i%3)*time.Hour) // every third has no time at all
			defer stop()
			v, err := e.Check(ctx, line)
			if i%3 == 0 {
				assert.ErrorIs(t, err, context.DeadlineExceeded)
				assert.Nil(t, v)
				return
			}
			if assert.NoError(t, err) {
				assert.Equal(t, want.Findings, v.Findings)
				assert.Equal(t, want.Digests, v.Digests)
			}
		})
	}
	group.Wait()
	assert.Empty(t, e.seats)
}
