"""The active currency codes of ISO 4217 and how many digits the minor unit of each has."""

from __future__ import annotations

_NONE = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF"
_TWO = (
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN "
    "BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP "
    "GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP "
    "LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR "
    "NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN "
    "SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XCD XCG YER ZAR "
    "ZMW ZWG"
)
_THREE = "BHD IQD JOD KWD LYD OMR TND"
_FOUR = "CLF UYW"

DIGITS = {
    code: digits
    for codes, digits in ((_NONE, 0), (_TWO, 2), (_THREE, 3), (_FOUR, 4))
    for code in codes.split()
}
"""ISO 4217, list one, from memory. ANG and BGN were replaced lately and stand on older bills.

Codes without a minor unit (metals, units of account) are no money one pays a seller with.
"""
