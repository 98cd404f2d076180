# METADATA
# title: The pad gas must not be used on this liquid
# description: |
#   The pad gas reacts with the liquid, dissolves in it in a dangerous way, or is barred for it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: meetings
#   scope: ["where=pad"]
#   needs: []
#   message: "{a} with {b}: this pad gas is not allowed. {why}"
#   action: "Choose another pad gas, or transfer by pump."
#   basis:
#     - document: 46 CFR 151.50-31
#       edition: "CFR 2015 annual edition"
#       clause: "(n)(5)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.service.pad_gas_forbidden

report contains {"subject": m.id, "a": m.a, "b": m.b, "why": m.why} if {
	some m in input.meetings
	m.where == "pad"
	m.forbidden_pad
	not m.air_pad
}
