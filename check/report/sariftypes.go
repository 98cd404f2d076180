package report

// sarifSchema is where the standard publishes its JSON Schema: SARIF 2.1.0, OASIS Standard, appendix on the schema (recalled).
const sarifSchema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json"

// The types hold the few properties of SARIF 2.1.0, clause 3, that a verdict fills.
type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool              sarifTool       `json:"tool"`
	AutomationDetails sarifID         `json:"automationDetails"`
	Artifacts         []sarifArtifact `json:"artifacts,omitempty"`
	ColumnKind        string          `json:"columnKind"`
	Results           []sarifResult   `json:"results"`
	Properties        map[string]any  `json:"properties"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name    string      `json:"name"`
	Version string      `json:"version"`
	Rules   []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID      string             `json:"id"`
	Short   sarifText          `json:"shortDescription"`
	Help    sarifText          `json:"help"`
	Default sarifConfiguration `json:"defaultConfiguration"`
}

type sarifConfiguration struct {
	Level string `json:"level"`
}

type sarifText struct {
	Text string `json:"text"`
}

type sarifID struct {
	ID string `json:"id"`
}

type sarifURI struct {
	URI string `json:"uri"`
}

type sarifArtifact struct {
	Location sarifURI          `json:"location"`
	Hashes   map[string]string `json:"hashes"`
}

type sarifResult struct {
	RuleID              string            `json:"ruleId"`
	RuleIndex           int               `json:"ruleIndex"`
	Level               string            `json:"level"`
	Message             sarifText         `json:"message"`
	Locations           []sarifLocation   `json:"locations,omitempty"`
	PartialFingerprints map[string]string `json:"partialFingerprints"`
	Properties          map[string]any    `json:"properties,omitempty"`
}

type sarifLocation struct {
	Physical *sarifPhysical `json:"physicalLocation,omitempty"`
	Logical  []sarifLogical `json:"logicalLocations,omitempty"`
}

type sarifPhysical struct {
	Artifact sarifURI     `json:"artifactLocation"`
	Region   *sarifRegion `json:"region,omitempty"`
}

type sarifRegion struct {
	Line   int `json:"startLine"`
	Column int `json:"startColumn"`
}

type sarifLogical struct {
	FullyQualifiedName string `json:"fullyQualifiedName"`
}
