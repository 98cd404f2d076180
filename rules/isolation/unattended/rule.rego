# METADATA
# title: Nobody stays with a pressurised transfer
# description: |
#   Most means of stopping need a person who sees the leak. US rules for road tankers and ammonia want
#   one all the time.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: line
#   scope: [pressurised, "!regime=29 CFR 1910.111"]
#   needs: [line.attended]
#   message: "Nobody stays with the transfer while the line is under pressure"
#   action: >-
#     Name a trained person who stays within sight of hose and valves from first pressure to the last
#     uncoupling.
#   basis:
#     - document: 49 CFR 177.834
#       edition: "CFR 2015 annual edition"
#       clause: "(i)(3)"
#       standing: published
#     - document: 49 CFR 177.840
#       edition: "CFR 2015 annual edition"
#       clause: "(p)-(q)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.isolation.unattended

report contains {"subject": "line"} if {
	input.line.pressurised
	input.line.attended == false
	not "29 CFR 1910.111" in input.line.regimes
}
