package main

import (
	"crypto/ed25519"
	"fmt"
	"os"
	"time"

	"lineworthy/check/approval"
	"lineworthy/check/record"
)

// recorded is the payload of a line of kind approval.
type recorded struct {
	Line     string             `json:"line"`
	Sheet    string             `json:"sheet"`
	Who      string             `json:"who"`
	Decision approval.Decision  `json:"decision"`
	Envelope *approval.Envelope `json:"envelope"`
}

// record comes after the envelope is on the disk. When it fails the same command may be given again.
func (n *signing) record(e *approval.Envelope, when time.Time) error {
	s, err := e.Statement()
	if err != nil {
		return err
	}
	r, err := record.At(n.register).Append(record.Item{Time: when, Kind: "approval", Payload: recorded{
		s.Predicate.Line, s.Subject[0].Name, s.Predicate.Who, s.Predicate.Decision, e,
	}})
	if r.SetAside != "" {
		fmt.Fprintf(n.err, "%s: the end of an earlier write that was cut short is now in %s\n", n.register, r.SetAside)
	}
	if err != nil {
		return usage(fmt.Errorf("%s is signed but not recorded; give the same command again once this is mended: %w", n.file, err))
	}
	if len(r.Backward) > 0 {
		fmt.Fprintf(n.err, "%s: the time is before that of the line above: a clock went back\n", n.register)
	}
	fmt.Fprintf(n.out, "recorded: %s line %d, sum %s\n", n.register, r.Last, r.Head)
	return nil
}

// moment is when something is recorded. The clock is looked at only when the caller does not say.
func moment(text string) (time.Time, error) {
	if text == "" {
		return time.Now().UTC().Truncate(time.Second), nil
	}
	t, err := time.Parse(time.RFC3339, text)
	if err != nil {
		return t, usage(fmt.Errorf("--time %s: write it like 2026-11-25T14:30:00Z", text))
	}
	return t, nil
}

const othersBits = 0o077 // leave for anybody but the owner

func privateKey(s streams, path string) (ed25519.PrivateKey, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, usage(err)
	}
	key, err := approval.PrivateKey(text)
	if err != nil {
		return nil, usage(fmt.Errorf("%s: %w", path, err))
	}
	if info, err := os.Stat(path); err == nil && info.Mode().Perm()&othersBits != 0 {
		fmt.Fprintf(s.err, "%s may be read by others, who can then sign in your name: chmod 600 it\n", path)
	}
	return key, nil
}

// publicKeys reads the keys that are trusted. A key given twice would count as two signers.
func publicKeys(paths []string) ([]approval.Key, error) {
	var keys []approval.Key
	seen := map[string]string{}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			return nil, usage(err)
		}
		key, err := approval.PublicKey(text)
		if err != nil {
			return nil, usage(fmt.Errorf("%s: %w", path, err))
		}
		id, err := approval.KeyID(key)
		if err != nil {
			return nil, err
		}
		if other, twice := seen[id]; twice {
			return nil, usage(fmt.Errorf("%s and %s hold the same key", other, path))
		}
		seen[id] = path
		keys = append(keys, approval.Key{Name: path, ID: id, Key: key})
	}
	return keys, nil
}
